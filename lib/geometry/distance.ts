import type { Point } from "./point";
import { rootSumSquare } from "./root-sum-square";

/** How far two points lie apart, in the unit they are given in. */
export function distance(a: Point, b: Point): number {
  return rootSumSquare(b.x - a.x, b.y - a.y);
}
