import type { InkPoint } from "../../lib/ink";

const LEAST_STEP_PX = 0.3; // of a CSS pixel: less is the digitiser's noise
const LEAST_PRESSURE_STEP = 0.04; // two of the 63 steps that are kept, and a little

/**
 * Whether a new point tells anything that the last kept one does not.
 *
 * Units:   panel units; `unitsAPixel` is how many of them a CSS pixel covers
 */
export function isWorthKeeping(last: InkPoint, next: InkPoint, unitsAPixel: number): boolean {
  const moved = Math.hypot(next[0] - last[0], next[1] - last[1]);
  return moved >= LEAST_STEP_PX * unitsAPixel || Math.abs(next[2] - last[2]) >= LEAST_PRESSURE_STEP;
}
