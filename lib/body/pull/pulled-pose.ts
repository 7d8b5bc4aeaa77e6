import { SIDES } from "../joint";
import type { PoseMarks } from "../mark";
import { markOf } from "../mark-of";
import { putMark } from "../shifted-marks";
import { limbJoint } from "../side";
import { followedInHeight, withoutLong } from "./followed-in-height";
import type { Pull } from "./pull";
import { pulledFigure } from "./pulled-figure";

/**
 * Both views of a pose after a joint was pulled in one: the other follows in height. Heights are the side
 * view's to say where it has the joint, since it has the lengths: a pull up or down from ahead is made
 * there first, and the front view follows; what is left of it is sideways.
 *
 * Units:   panel units, y down
 * Errors:  as `pulledFigure`
 */
export function pulledPose(before: PoseMarks, pull: Omit<Pull, "side">): PoseMarks {
  const { view, joint, to } = pull;
  if (view === "side") {
    const side = pulledFigure(before.side, pull);
    return { side, front: followedInHeight(before.side, side, before.front, "front") };
  }
  const seen = markOf(before.side, joint);
  const from = markOf(before.front, joint);
  if (from === null) return before;
  const raised =
    seen === null
      ? before.side
      : pulledFigure(before.side, {
          ...pull,
          view: "side",
          to: { x: seen.x, y: seen.y + to.y - from.y },
        });
  const high = followedInHeight(before.side, raised, before.front, "front");
  const level = seen === null ? to.y : (markOf(high, joint)?.y ?? to.y);
  const front = pulledFigure(high, { ...pull, to: { x: to.x, y: level }, side: raised });
  return levelled(before, { side: followedInHeight(high, front, raised, "side"), front });
}

/** From ahead knees and elbows go as high as the side view solved them, where bones allow. */
function levelled(before: PoseMarks, { side, front }: PoseMarks): PoseMarks {
  let marks = front;
  for (const joint of MIDDLES) {
    const was = markOf(before.side, joint);
    const is = markOf(side, joint);
    const from = markOf(before.front, joint);
    const now = markOf(marks, joint);
    if (was === null || is === null || from === null || now === null || was.y === is.y) continue;
    marks = putMark(marks, joint, { x: now.x, y: from.y + is.y - was.y });
  }
  return { side, front: marks === front ? front : withoutLong(marks, side) };
}

const MIDDLES = SIDES.flatMap((side) => [limbJoint(side, "knee"), limbJoint(side, "elbow")]);
