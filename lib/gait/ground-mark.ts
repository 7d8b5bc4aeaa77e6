import { type JointName, type LegLength, markOf, sideToGround } from "../body";
import type { Walk, WalkPanel } from "./walk";

/** Where a mark of the side view lies on the ground. Leg lengths; ± is the mark's own. */
export interface GroundMark {
  readonly x: number;
  readonly y: number;
  readonly plusMinus: number;
}

/**
 * Ground x of a panel's middle: as set by hand, or carried forward by the advance since frame 1.
 * So a walk on the spot, whose ground slides back under the walker, and one that travels are read
 * by one rule. Leg lengths; not a number when the walk has no usable advance.
 */
export function placeOf(panel: WalkPanel, advance: number): number {
  return panel.place ?? advance * (panel.frame - 1);
}

/** A side-view mark in ground space, or null where it, the leg length or the place is missing. */
export function groundMark(
  panel: WalkPanel,
  joint: JointName,
  { advance }: Pick<Walk, "advance">,
  leg: LegLength,
): GroundMark | null {
  const mark = markOf(panel.marks.side, joint);
  const place = placeOf(panel, advance);
  if (mark === null || leg.kind === "cannot-tell" || !Number.isFinite(place)) return null;
  const point = sideToGround(mark, { place, legLength: leg.value });
  return { ...point, plusMinus: mark.precision / leg.value };
}
