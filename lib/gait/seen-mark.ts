import { type JointName, type LegLength, markOf, sideToGround } from "../body";
import type { WalkPanel } from "./walk";

/** Where a mark of the side view lies on the ground. Leg lengths; ± is the mark's own. */
export interface GroundMark {
  readonly x: number;
  readonly y: number;
  readonly plusMinus: number;
}

/**
 * A side-view mark in ground space counted from its panel's middle, or null where it or the leg length
 * is missing.
 */
export function seenMark(panel: WalkPanel, joint: JointName, leg: LegLength): GroundMark | null {
  const mark = markOf(panel.marks.side, joint);
  if (mark === null || leg.kind === "cannot-tell") return null;
  const { x, y } = sideToGround(mark, { place: 0, legLength: leg.value });
  return { x, y, plusMinus: mark.precision / leg.value };
}
