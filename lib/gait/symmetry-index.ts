import { requirePositive } from "../require";

/**
 * Symmetry index |L − R| / (½ (L + R)): 0 where both sides are equal.
 *
 * Units:   two numbers in one unit → a share (0.087 is 8.7 %)
 * Errors:  RangeError unless both are finite and above zero
 * Source:  Robinson, Herzog & Nigg (1987), J Manip Physiol Ther 10:172
 *
 * @example
 * Number(symmetryIndex(0.66, 0.72).toFixed(4)); // => 0.087
 */
export function symmetryIndex(left: number, right: number): number {
  requirePositive("symmetryIndex", { left, right });
  return Math.abs(left - right) / ((left + right) / 2);
}
