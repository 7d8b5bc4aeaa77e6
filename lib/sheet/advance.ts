import { requirePositive } from "../require";
import type { SheetHead } from "./sheet";

/**
 * How far the ground passes under the walker a frame, when nobody set it: two steps' length over the
 * frames of a left and a right step.
 *
 * Units:   leg lengths, frames → leg lengths a frame
 * Errors:  RangeError unless all are above zero
 *
 * @example
 * advanceOf(0.78, { left: 12, right: 14 }); // => 0.06
 */
export function advanceOf(stepLength: number, framesPerStep: SheetHead["framesPerStep"]): number {
  const { left, right } = framesPerStep;
  requirePositive("advanceOf", { stepLength, left, right });
  return (2 * stepLength) / (left + right);
}
