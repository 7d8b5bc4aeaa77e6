import { createRequire } from "node:module";
import { WEIGHTS, type Weight } from "../lib/export";

const PACKAGE = "@expo-google-fonts/atkinson-hyperlegible-next";
const FOLDERS: Readonly<Record<Weight, string>> = {
  400: "400Regular",
  600: "600SemiBold",
  700: "700Bold",
};

/** Where the shipped family's TTF files lie on this machine, by weight. */
export function shippedFonts(): readonly { readonly weight: Weight; readonly file: string }[] {
  const { resolve } = createRequire(import.meta.url);
  return WEIGHTS.map((weight) => {
    const folder = FOLDERS[weight];
    const name = `AtkinsonHyperlegibleNext_${folder}.ttf`;
    return { weight, file: resolve(`${PACKAGE}/${folder}/${name}`) };
  });
}
