import { svgText } from "../lib/export";

/** Draws an SVG file: four bytes a pixel, from the top left. */
export type Rasterise = (svg: string) => { readonly pixels: Uint8Array; readonly width: number };

const CELL = 64; // px a letter
const NOBODYS = "\u{10fffd}"; // of the last private plane: no font of a system has it

/**
 * The letters that no font of this system has. They are told by their shape: the same box that stands for
 * a letter which nobody has.
 */
export function lettersNowhere(letters: readonly string[], rasterise: Rasterise): string[] {
  const [box = "", ...shapes] = cellsOf([NOBODYS, ...letters], rasterise);
  return letters.filter((_, index) => shapes[index] === box);
}

/** What each letter looks like, as text that can be compared. */
function cellsOf(letters: readonly string[], rasterise: Rasterise): string[] {
  const texts = letters.map(
    (letter, row) =>
      `<text x="16" y="${row * CELL + 44}" font-size="32" font-weight="700">${svgText(letter)}</text>`,
  );
  const size = `width="${CELL}" height="${letters.length * CELL}"`;
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" ${size}>${texts.join("")}</svg>`;
  const { pixels, width } = rasterise(svg);
  const bytes = CELL * width * 4;
  return letters.map((_, row) =>
    Buffer.from(pixels.subarray(row * bytes, (row + 1) * bytes)).toString("base64"),
  );
}
