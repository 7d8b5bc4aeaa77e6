import { FAMILY } from "./typeface";
import type { Weight } from "./weight";

/** One weight of the shipped family, its TTF file in base64. */
export interface FontFace {
  readonly weight: Weight;
  readonly base64: string;
}

/**
 * Puts the family into an SVG file, so that it looks the same where the family is not installed,
 * and where a picture may not fetch anything (a browser drawing SVG onto a canvas).
 *
 * Errors:  TypeError unless the text is an SVG file and the fonts are base64
 */
export function embedFonts(svg: string, faces: readonly FontFace[]): string {
  const opening = /<svg\b[^>]*>/.exec(svg);
  if (opening === null) throw new TypeError("embedFonts needs an SVG file, got none");
  const rules = faces.map(({ weight, base64 }) => {
    if (!/^[A-Za-z0-9+/]+={0,2}$/.test(base64)) {
      throw new TypeError(`embedFonts needs base64 for weight ${weight}, got something else`);
    }
    const source = `url("data:font/ttf;base64,${base64}") format("truetype")`;
    return `@font-face{font-family:"${FAMILY}";font-weight:${weight};src:${source}}`;
  });
  const end = opening.index + opening[0].length;
  return `${svg.slice(0, end)}\n<defs><style>${rules.join("")}</style></defs>${svg.slice(end)}`;
}
