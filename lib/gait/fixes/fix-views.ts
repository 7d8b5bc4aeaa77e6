import { followedInHeight, markOf, type PoseMarks, putMark } from "../../body";
import type { Remark } from "../finding";
import { heightsApart } from "../heights-apart";
import { HEIGHT_LIMITS } from "../methods/views";
import type { Study } from "../study";
import type { WalkPanel } from "../walk";
import { movedPanel, type Proposal } from "./proposal";

/**
 * Views that differ in height: the front view's joints as high as the side view has them, those that differ
 * first, then all.
 */
export function fixViews(study: Study, { panels }: Remark): readonly Proposal[] {
  const panel = study.walk.panels.find(({ id }) => id === panels[0]);
  if (panel === undefined) return [];
  const least = HEIGHT_LIMITS.at(-1)?.value ?? 0;
  return [least, 0].map((limit) => {
    const marks = levelled(study, panel, limit);
    const title = "Take the front view's heights from the side";
    return movedPanel(panel, { marks, short: [] }, title, study.leg);
  });
}

/** The front view with every joint that lies farther than this from its height in the side view put there. */
function levelled({ leg }: Study, { marks, ...panel }: WalkPanel, limit: number): PoseMarks {
  const { side, front } = marks;
  const joints = heightsApart({ marks, ...panel }, leg)
    .filter(({ measured }) => Math.abs(measured.value) > limit)
    .map(({ joint }) => joint);
  // As if the side view's joints had come from where the front view still has them.
  const before = joints.reduce((was, joint) => {
    const mark = markOf(side, joint);
    const ahead = markOf(front, joint);
    return mark === null || ahead === null ? was : putMark(was, joint, { x: mark.x, y: ahead.y });
  }, side);
  return { side, front: followedInHeight(before, side, front, "front") };
}
