import { readFile } from "node:fs/promises";
import { embedFonts } from "../lib/export";
import { shippedFonts } from "./shipped-fonts";

/** An SVG file with the family put into it, so that it looks the same everywhere. */
export async function withFonts(svg: string): Promise<string> {
  const faces = shippedFonts().map(async ({ weight, file }) => ({
    weight,
    base64: await readFile(file, "base64"),
  }));
  return embedFonts(svg, await Promise.all(faces));
}
