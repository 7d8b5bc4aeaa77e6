import type { Point } from "./point";

/** The point half-way between two points, in the unit they are given in. */
export function midpoint(a: Point, b: Point): Point {
  return { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
}
