import { ADVANCES } from "./typeface-advances";
import type { Weight } from "./weight";

/**
 * The one family that ships with the board, for screen, print and SVG: Atkinson Hyperlegible Next,
 * SIL Open Font License, from the package `@expo-google-fonts/atkinson-hyperlegible-next`. Its
 * figures are proportional; where they must line up, the page asks for its `tnum` feature, and the
 * print centres them or sets them flush right.
 */
export const FAMILY = "Atkinson Hyperlegible Next";

/** A size and weight of the family. Units: `size` in the surface's units. */
export interface Face {
  readonly size: number;
  readonly weight: Weight;
}

/** A face as a canvas wants it. */
export function fontOf({ size, weight }: Face): string {
  return `${weight} ${size}px "${FAMILY}", sans-serif`;
}

/** How wide a text runs. Units: those of the face's size. */
export type MeasureText = (text: string, face: Face) => number;

const UNKNOWN_NARROW = 0.62; // em; the family's average is 0.53: better a little wide than cut
const UNKNOWN_WIDE = 1; // em; ideographs and the like fill their square
const FIRST_WIDE = 0x2e80; // where the CJK blocks begin

/**
 * Widths by the family's own advance table, so that a print can be laid out where there is no
 * browser. Kerning is left out: it only ever tightens, by less than 2 % over a line.
 *
 * Source:  the fonts' `hmtx` and `cmap` tables, copied into `typeface-advances.ts`
 */
export const measureShipped: MeasureText = (text, { size, weight }) => {
  const table = ADVANCES[weight];
  let ems = 0;
  for (const letter of text) ems += (table.get(letter) ?? guess(letter)) / 1000;
  return ems * size;
};

function guess(letter: string): number {
  const code = letter.codePointAt(0) ?? 0;
  return 1000 * (code >= FIRST_WIDE ? UNKNOWN_WIDE : UNKNOWN_NARROW);
}

/** The letters of a text that the family has no shape for: another family must stand in. */
export function missingLetters(text: string): string[] {
  const shaped = ADVANCES[400];
  return [...new Set(text)].filter((letter) => letter.trim() !== "" && !shaped.has(letter));
}
