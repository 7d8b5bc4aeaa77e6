import { requirePositive } from "../require";

/**
 * How far the hips would rise over a stiff, straight leg, as a pair of compasses walks: L − √(L² − (S/2)²).
 * People rise by 0.46 ± 0.10 of it (15 captured walkers), since they bend their knees and roll over their feet.
 *
 * Units:   leg and step in one unit → the rise in it
 * Errors:  RangeError unless both are finite and above zero, and a step is shorter than two legs
 * Source:  the compass gait of Saunders, Inman & Eberhart (1953), J Bone Joint Surg 35A:543
 *
 * @example
 * Number(compassRise(0.9, 0.7).toFixed(4)); // => 0.0708
 */
export function compassRise(leg: number, step: number): number {
  requirePositive("compassRise", { leg, step });
  if (step >= 2 * leg) {
    throw new RangeError(`compassRise needs a step shorter than two legs, got ${step} of ${leg}`);
  }
  return leg - Math.sqrt(leg ** 2 - (step / 2) ** 2);
}
