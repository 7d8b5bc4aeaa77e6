import { FAMILY, missingLetters } from "../lib/export";
import type { HandedSheet } from "../lib/sheet";
import { lettersNowhere } from "./letters-nowhere";
import { shippedFonts } from "./shipped-fonts";
import { type Io, Trouble } from "./trouble";

const MAX_PIXELS = 250_000_000; // 1 GB of picture while it is drawn
const UNKNOWN = "?"; // stands for a letter that no font has

/**
 * What draws SVG files into PNG, so many pixels wide. Letters that the family lacks are taken from this
 * system's fonts, which is said; one that no font has becomes a question mark, since the rasteriser gives up
 * looking at the first such letter and would lose the rest of the line with it.
 *
 * Errors:  Trouble for a picture that is too large
 */
export async function pngPress(sheet: HandedSheet, width: number, io: Io) {
  const missing = missingLetters(writtenOn(sheet));
  // Loaded here, so that the other commands start without it.
  const { Resvg } = await import("@resvg/resvg-js");
  const font = {
    loadSystemFonts: missing.length > 0,
    fontFiles: shippedFonts().map(({ file }) => file),
    defaultFontFamily: FAMILY,
  };
  const nowhere =
    missing.length === 0 ? [] : lettersNowhere(missing, (svg) => new Resvg(svg, { font }).render());
  const elsewhere = missing.filter((letter) => !nowhere.includes(letter));
  if (elsewhere.length > 0) {
    io.err(`heelstrip: ${FAMILY} has no ${elsewhere.join(" ")}: this system's fonts stand in`);
  }
  if (nowhere.length > 0) {
    io.err(`heelstrip: no font on this system has ${nowhere.join(" ")}: "${UNKNOWN}" stands in`);
  }
  return async (svg: string): Promise<Uint8Array> => {
    const known = nowhere.reduce((text, letter) => text.replaceAll(letter, UNKNOWN), svg);
    const picture = new Resvg(known, { fitTo: { mode: "width", value: width }, font });
    const height = Math.round((width * picture.height) / picture.width);
    if (width * height > MAX_PIXELS) {
      throw new Trouble(`${width} × ${height} pixels are too many; expected a smaller --width`);
    }
    return picture.render().asPng();
  };
}

/** Whatever people wrote that the print shows. */
function writtenOn({ head, onPurpose = [] }: HandedSheet): string {
  const reasons = onPurpose.map(({ reason, by }) => `${reason}${by}`);
  return `${head.title}${head.shot}${head.credit}${reasons.join("")}`;
}
