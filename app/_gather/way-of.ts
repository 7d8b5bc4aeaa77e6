import type { InkPoint } from "../../lib/ink";

/** The middle of a stroke as an SVG path; a dot is a line to where it began. */
export function wayOf(points: readonly InkPoint[]): string {
  const ways = points.map(([x, y], index) => `${index === 0 ? "M" : "L"}${x} ${y}`);
  return points.length === 1 ? `${ways[0]}h0` : ways.join("");
}
