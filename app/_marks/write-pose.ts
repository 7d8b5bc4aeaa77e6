import { JOINTS, type JointName, type Mark, markOf, type PoseMarks } from "../../lib/body";
import type { View } from "../../lib/geometry";
import { type Panel, placeMarks } from "../../lib/sheet";
import type { Room } from "../_room";

/**
 * Puts the marks of a pose that differ from a panel's on the sheet, in one step of undo. `leavesInk`: the
 * figure goes elsewhere than its ink, which is to be redrawn.
 */
export function writePose(
  { drawing }: Room,
  panel: Panel,
  pose: PoseMarks,
  leavesInk: boolean,
): void {
  const moved = { side: movedIn(panel, pose, "side"), front: movedIn(panel, pose, "front") };
  if (Object.keys(moved.side).length + Object.keys(moved.front).length === 0) return;
  placeMarks(drawing, panel.id, moved, { leavesInk });
}

function movedIn(panel: Panel, pose: PoseMarks, view: View): PoseMarks[View] {
  const moved = JOINTS.flatMap((joint): [JointName, Mark][] => {
    const was = markOf(panel.marks[view], joint);
    const is = markOf(pose[view], joint);
    const same = was?.x === is?.x && was?.y === is?.y && was?.precision === is?.precision;
    return is === null || same ? [] : [[joint, is]];
  });
  return Object.fromEntries(moved);
}
