import { requirePositive } from "../require";

/**
 * Cadence: how many steps the walker takes in a minute.
 *
 * Units:   frames per step, frames per second → steps per minute
 * Errors:  RangeError unless both are finite and above zero
 * Source:  steps per minute, as tabulated by Murray, Drought & Kory (1964), J Bone Joint Surg Am 46:335
 *
 * @example
 * cadence(12, 24); // => 120
 */
export function cadence(framesPerStep: number, framesPerSecond: number): number {
  requirePositive("cadence", { framesPerStep, framesPerSecond });
  return (60 * framesPerSecond) / framesPerStep;
}
