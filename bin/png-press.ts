import { FAMILY, missingLetters } from "../lib/export";
import type { HandedSheet } from "../lib/sheet";
import { shippedFonts } from "./shipped-fonts";
import { type Io, Trouble } from "./trouble";

const MAX_PIXELS = 250_000_000; // 1 GB of picture while it is drawn

/**
 * What draws SVG files into PNG, so many pixels wide. Letters that the family lacks are taken from this
 * system's fonts, which is said.
 *
 * Errors:  Trouble for a picture that is too large
 */
export async function pngPress(sheet: HandedSheet, width: number, io: Io) {
  const missing = missingLetters(writtenOn(sheet));
  if (missing.length > 0) {
    io.err(`heelstrip: ${FAMILY} has no ${missing.join(" ")}: this system's fonts stand in`);
  }
  // Loaded here, so that the other commands start without it.
  const { Resvg } = await import("@resvg/resvg-js");
  return async (svg: string): Promise<Uint8Array> => {
    const picture = new Resvg(svg, {
      fitTo: { mode: "width", value: width },
      font: {
        loadSystemFonts: missing.length > 0,
        fontFiles: shippedFonts().map(({ file }) => file),
        defaultFontFamily: FAMILY,
      },
    });
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
