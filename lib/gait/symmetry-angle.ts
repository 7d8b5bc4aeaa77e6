import { requirePositive } from "../require";

/**
 * Symmetry angle: how far the pair (right, left) turns from the line of equal sides, as a share of a right
 * angle. Unlike the index it needs no mean to divide by. Above 0 where the right is more.
 *
 * Units:   two numbers in one unit → a share (0.028 is 2.8 %)
 * Errors:  RangeError unless both are finite and above zero
 * Source:  Zifchock, Davis, Higginson & Royer (2008), Gait Posture 27:622
 *
 * @example
 * Number(symmetryAngle(0.66, 0.72).toFixed(5)); // => 0.02766
 */
export function symmetryAngle(left: number, right: number): number {
  requirePositive("symmetryAngle", { left, right });
  return (Math.PI / 4 - Math.atan(left / right)) / (Math.PI / 2);
}
