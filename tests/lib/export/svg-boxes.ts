import { measureShipped, type Weight } from "../../../lib/export";

/** A text of an SVG file with the box it takes. Units: the file's pixels. */
export interface TextBox {
  readonly text: string;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly size: number;
}

const TEXT =
  /<text x="([-\d.]+)" y="([-\d.]+)" font-family="[^"]*" font-size="([\d.]+)" font-weight="(\d+)"(?: text-anchor="(\w+)")?[^>]*>([^<]*)<\/text>/g;

// Of the family's capitals and descenders, in ems: OS/2 sCapHeight 668, descender of "g" about 210.
const ABOVE = 0.7;
const BELOW = 0.22;

/** Every text of the file, in its order. */
export function textBoxes(svg: string): TextBox[] {
  return [...svg.matchAll(TEXT)].map((match) => {
    const [, x, y, size = "0", weight, anchor = "start", escaped = ""] = match;
    const text = plain(escaped);
    const face = { size: Number(size), weight: Number(weight) as Weight };
    const width = measureShipped(text, face);
    const shift = { start: 0, middle: 0.5, end: 1 }[anchor] ?? 0;
    const left = Number(x) - shift * width;
    return {
      text,
      left,
      right: left + width,
      top: Number(y) - ABOVE * face.size,
      bottom: Number(y) + BELOW * face.size,
      size: face.size,
    };
  });
}

function plain(text: string): string {
  const letters: Record<string, string> = {
    "&lt;": "<",
    "&gt;": ">",
    "&quot;": '"',
    "&#39;": "'",
    "&amp;": "&",
  };
  return text.replace(/&(?:lt|gt|quot|#39|amp);/g, (code) => letters[code] ?? code);
}

/** Pairs of texts that lie over one another. */
export function overlaps(boxes: readonly TextBox[]): [string, string][] {
  return boxes.flatMap((one, index) =>
    boxes
      .slice(index + 1)
      .filter(
        (other) =>
          one.left < other.right &&
          other.left < one.right &&
          one.top < other.bottom &&
          other.top < one.bottom,
      )
      .map((other): [string, string] => [one.text, other.text]),
  );
}

/** Width and height of the file. */
export function sizeOf(svg: string): { width: number; height: number } {
  const [, width, height] = /<svg [^>]*width="([\d.]+)" height="([\d.]+)"/.exec(svg) ?? [];
  return { width: Number(width), height: Number(height) };
}
