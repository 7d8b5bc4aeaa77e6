import type { Point } from "../../../geometry";
import { curve } from "./curve";
import type { Placer } from "./placer";

type Pair = readonly [ahead: number, up: number];

/** An oval as a hand draws it: once round and a bit further. Leg lengths. */
export function oval(place: Placer, [a, u]: Pair, [wide, high]: Pair): Point[] {
  const knots = Array.from({ length: 15 }, (_, i) => {
    const angle = (i / 12) * 2 * Math.PI + 2;
    const spiral = 1 + (i - 6) * 0.004;
    return place(a + wide * spiral * Math.cos(angle), u + high * spiral * Math.sin(angle));
  });
  return curve(knots);
}
