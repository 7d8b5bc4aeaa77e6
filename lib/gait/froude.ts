import { requirePositive } from "../require";

/** Standard gravity, metres per second squared (9.80665), to the digits the literature on gait uses. */
const GRAVITY = 9.81;

/**
 * Froude number v²/(gL): how near a walk is to a run, whatever the size of the walker. People walk
 * at about 0.2 and change to a run at about 0.5.
 *
 * Units:   metres per second, metres → a pure number
 * Errors:  RangeError unless both are finite and above zero
 * Source:  Alexander (1989), Physiol Rev 69:1199
 *
 * @example
 * Number(froude(1.3, 0.9).toFixed(3)); // => 0.191
 */
export function froude(metresPerSecond: number, legMetres: number): number {
  requirePositive("froude", { metresPerSecond, legMetres });
  return metresPerSecond ** 2 / (GRAVITY * legMetres);
}
