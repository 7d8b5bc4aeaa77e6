import type { Face, MeasureText } from "./typeface";

const ELLIPSIS = "…";
const BREAKS = /[^\S\u00a0\u202f]+/; // not where a space holds a number to its unit

/**
 * Breaks a text into lines no wider than `width`. A word that is wider than a line by itself is
 * broken inside, so that nothing runs over an edge.
 *
 * Shapes:  one text in, its lines out (none for an empty text)
 */
export function wrapText(
  text: string,
  face: Face,
  width: number,
  measure: MeasureText,
): readonly string[] {
  const lines: string[] = [];
  let line = "";
  for (const word of text.split(BREAKS).filter((part) => part !== "")) {
    const longer = line === "" ? word : `${line} ${word}`;
    if (measure(longer, face) <= width) {
      line = longer;
      continue;
    }
    if (line !== "") lines.push(line);
    const pieces = breakWord(word, face, width, measure);
    lines.push(...pieces.slice(0, -1));
    line = pieces.at(-1) ?? "";
  }
  if (line !== "") lines.push(line);
  return lines;
}

function breakWord(word: string, face: Face, width: number, measure: MeasureText): string[] {
  const pieces: string[] = [];
  let piece = "";
  for (const letter of word) {
    if (piece !== "" && measure(piece + letter, face) > width) {
      pieces.push(piece);
      piece = "";
    }
    piece += letter;
  }
  return [...pieces, piece];
}

/** The text, or as much of it as fits with an ellipsis. */
export function ellipsise(text: string, face: Face, width: number, measure: MeasureText): string {
  if (measure(text, face) <= width) return text;
  const letters = [...text];
  while (letters.length > 0 && measure(letters.join("").trimEnd() + ELLIPSIS, face) > width) {
    letters.pop();
  }
  return letters.join("").trimEnd() + ELLIPSIS;
}

/** At most so many lines; the last one ends in an ellipsis where more was to come. */
export function wrapAtMost(
  text: string,
  face: Face,
  width: number,
  measure: MeasureText,
  most: number,
): readonly string[] {
  const lines = wrapText(text, face, width, measure);
  if (lines.length <= most) return lines;
  const rest = lines.slice(most - 1).join(" ");
  return [...lines.slice(0, most - 1), ellipsise(rest, face, width, measure)];
}
