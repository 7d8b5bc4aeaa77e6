import type { Letter } from "./point-at/shape";

/** How high a letter is for its width, with what hangs under the line. */
export const LETTER_HEIGHT = 1.25;

/**
 * Two letters over joints that lie close are moved aside, each to its own, until they are apart. Letters that
 * do not lie on each other stay where they are.
 *
 * Units:   those of the letters; `size` is how wide one is
 *
 * @example
 * const close = [{ text: "L", at: { x: 10, y: 0 } }, { text: "R", at: { x: 12, y: 0 } }];
 * lettersApart(close, 8).map(({ at }) => at.x); // => [7, 15]
 */
export function lettersApart(letters: readonly Letter[], size: number): readonly Letter[] {
  const [one, other] = letters;
  if (one === undefined || other === undefined) return letters;
  const lack = size - Math.abs(other.at.x - one.at.x);
  if (lack <= 0 || Math.abs(other.at.y - one.at.y) > LETTER_HEIGHT * size) return letters;
  const aside = (one.at.x <= other.at.x ? -lack : lack) / 2;
  return [
    { ...one, at: { ...one.at, x: one.at.x + aside } },
    { ...other, at: { ...other.at, x: other.at.x - aside } },
  ];
}
