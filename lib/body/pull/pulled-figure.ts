import { requireFinite } from "../../require";
import { type JointName, type LimbJoint, SIDES, type Side } from "../joint";
import type { ViewMarks } from "../mark";
import { markOf } from "../mark-of";
import { putMark } from "../shifted-marks";
import type { Seen } from "./limb";
import { movedBody } from "./move-body";
import type { Pull } from "./pull";
import { pulledFoot, pulledWrist } from "./pull-end";
import { pulledElbow, pulledKnee } from "./pull-middle";
import { turnedChest, turnedHead } from "./turn-chest";

/**
 * One view's marks after a joint was pulled. Limbs keep their lengths and knees and elbows the side they
 * were drawn on; planted feet stay. A hip moves the body over its feet, a shoulder or the neck turns
 * the chest about the hips, the head turns about the neck, a wrist takes its arm along, a knee or elbow
 * turns on its circle, a free foot moves or rolls. Out of reach a limb stretches straight toward the
 * pull and stops there. From ahead bones are foreshortened: there they are only never made too long.
 *
 * Shapes:  marks in, marks out; joints that are not marked are not invented, and what does not move
 *          is kept to the last digit
 * Units:   panel units, y down; moved marks are rounded to a hundredth
 * Errors:  RangeError unless the place is finite; a joint that is not marked, or of a planted foot,
 *          leaves all as it is
 */
export function pulledFigure(before: ViewMarks, pull: Pull): ViewMarks {
  const { joint, to, pinned, view } = pull;
  requireFinite("pulledFigure", { x: to.x, y: to.y });
  const mark = markOf(before, joint);
  if (mark === null) return before;
  const seen: Seen = { view, side: pull.side ?? null };
  if (joint === "load") return putMark(before, joint, to);
  if (joint === "head") return turnedHead(before, to);
  if (joint === "neck") return turnedChest(before, joint, to, view);
  const [side, part] = partOf(joint);
  if (part === "hip")
    return movedBody(before, { x: to.x - mark.x, y: to.y - mark.y }, pinned, seen);
  if (part === "shoulder") return turnedChest(before, joint, to, view);
  if (part === "elbow") return pulledElbow(before, side, to, seen);
  if (part === "wrist") return pulledWrist(before, side, to, seen);
  if (part === "knee") return pulledKnee(before, side, to, { pinned, seen });
  return pinned.includes(side) ? before : pulledFoot(before, side, joint, to, seen);
}

function partOf(joint: Exclude<JointName, "head" | "neck" | "load">): [Side, LimbJoint] {
  const side = SIDES.find((one) => joint.startsWith(`${one}-`)) ?? "left";
  return [side, joint.slice(side.length + 1) as LimbJoint];
}
