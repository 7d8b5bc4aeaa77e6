import type { Point } from "./point";

/** How far two points lie apart, in the unit they are given in. */
export function distance(a: Point, b: Point): number {
  return Math.hypot(b.x - a.x, b.y - a.y);
}
