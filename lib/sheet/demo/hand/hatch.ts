import type { Point } from "../../../geometry";
import { curve } from "./curve";
import type { Pencil } from "./pencil";
import { across, add, between, dot, lengthOf, sub, times, unit } from "./vector";

/** How a tone is hatched: along which way, how far apart the lines, how firm. Leg lengths. */
export interface Tone {
  readonly along: Point;
  readonly gap?: number;
  readonly firm?: number;
}

const SHORTEST = 0.05; // leg lengths: what is shorter is no line

/** Light, parallel, slightly bowed lines within an outline. */
export function hatch(
  pencil: Pencil,
  outline: readonly Point[],
  { along, gap = 0.034, firm = 0.3 }: Tone,
): void {
  const way = unit(along);
  const over = across(way);
  const heights = outline.map((corner) => dot(corner, over));
  const top = Math.max(...heights);
  for (
    let h = Math.min(...heights) + gap * 0.6;
    h < top;
    h += gap * (0.85 + 0.3 * pencil.chance())
  ) {
    const hits = crossings(outline, over, h).toSorted((a, b) => dot(a, way) - dot(b, way));
    for (let i = 0; i + 1 < hits.length; i += 2) {
      const [from, to] = [hits[i], hits[i + 1]];
      if (from === undefined || to === undefined || lengthOf(sub(to, from)) < SHORTEST) continue;
      const a = between(from, to, 0.03 + 0.06 * pencil.chance());
      const b = between(from, to, 0.9 + 0.09 * pencil.chance());
      const middle = add(between(a, b, 0.5), times(over, 0.004));
      pencil.line(curve([a, middle, b]), { width: 4, firm });
    }
  }
}

function crossings(outline: readonly Point[], over: Point, h: number): Point[] {
  return outline.flatMap((a, i) => {
    const b = outline[(i + 1) % outline.length];
    if (b === undefined) return [];
    const [from, to] = [dot(a, over) - h, dot(b, over) - h];
    return from > 0 === to > 0 ? [] : [between(a, b, from / (from - to))];
  });
}
