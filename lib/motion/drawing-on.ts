import { requireFinite, requirePositive } from "../require";
import type { Frame } from "./frame";
import { type Kept, lastHeld, poseOn } from "./hold";

/**
 * The frame of the drawing that is on at a frame, where what lies between the poses is drawn as well: on
 * twos the one of frame 3 is still on at 4, on threes that of frame 4 until 6. A pose comes on at its own
 * frame, wherever that lies, and while it is held nothing else does.
 *
 * Shapes:  poses in frame order; the exposure is 1 on ones, 2 on twos, 3 on threes
 * Units:   frames, counted from 1
 * Errors:  RangeError unless the frame is finite and the exposure above 0; before the first pose it is the
 *          frame itself that is drawn, or the drawn one before it
 *
 * @example
 * const poses = [{ frame: 1, hold: 0 }, { frame: 4, hold: 3 }, { frame: 12, hold: 0 }];
 * [1, 2, 3, 4, 8, 9, 10, 11, 12].map((frame) => drawingOn(poses, frame, 2)); // => [1, 1, 3, 4, 4, 9, 9, 11, 12]
 */
export function drawingOn(poses: readonly Kept[], frame: Frame, exposure: 1 | 2 | 3): Frame {
  requireFinite("drawingOn", { frame });
  requirePositive("drawingOn", { exposure });
  const drawn = 1 + exposure * Math.floor((frame - 1) / exposure);
  const pose = poseOn(poses, frame, exposure);
  if (pose === undefined) return drawn;
  const isHeld = pose.hold > 0 && frame <= lastHeld(pose, exposure);
  return isHeld ? pose.frame : Math.max(pose.frame, drawn);
}
