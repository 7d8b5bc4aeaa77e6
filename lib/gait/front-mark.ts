import { frontToGround, type JointName, type LegLength, markOf } from "../body";
import { perPanel } from "./per-panel";
import type { WalkPanel } from "./walk";

/** Where a mark of the front view lies: z to the walker's right, y up. Leg lengths; ± the mark's own. */
export interface FrontMark {
  readonly z: number;
  readonly y: number;
  readonly plusMinus: number;
}

/** A front-view mark in ground space, or null where it or the leg length is missing. */
export function frontMark(panel: WalkPanel, joint: JointName, leg: LegLength): FrontMark | null {
  const asked = askedFor(panel, leg);
  const known = asked.get(joint);
  if (known !== undefined) return known;
  const mark = worked(panel, joint, leg);
  asked.set(joint, mark);
  return mark;
}

const askedFor = perPanel(() => new Map<JointName, FrontMark | null>());

function worked(panel: WalkPanel, joint: JointName, leg: LegLength): FrontMark | null {
  const mark = markOf(panel.marks.front, joint);
  if (mark === null || leg.kind === "cannot-tell") return null;
  const { z, y } = frontToGround(mark, leg.value);
  return { z, y, plusMinus: mark.precision / leg.value };
}
