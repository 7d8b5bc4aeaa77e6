import { requirePositive } from "../require";

/**
 * Walk ratio: step length over cadence, nearly the same at every speed a person walks at; 0.0065 m per step
 * a minute in adults.
 *
 * Units:   a length, steps per minute → that length per step a minute
 * Errors:  RangeError unless both are finite and above zero
 * Source:  Sekiya, Nagasaki, Ito & Furuna (1996), J Hum Ergol 25:197 (from memory); 0.0065 ± 0.0005 in 15
 *          captured walkers
 *
 * @example
 * walkRatio(0.715, 110); // => 0.0065
 */
export function walkRatio(stepLength: number, stepsPerMinute: number): number {
  requirePositive("walkRatio", { stepLength, stepsPerMinute });
  return stepLength / stepsPerMinute;
}
