import { type JointName, type LegLength, markOf, sideToGround } from "../body";
import type { Walk, WalkPanel } from "./walk";

/** Where a mark of the side view lies on the ground. Leg lengths; ± is the mark's own. */
export interface GroundMark {
  readonly x: number;
  readonly y: number;
  readonly plusMinus: number;
}

/** How the ground goes by: what tells a panel's place beside the panel itself. */
export type GroundPace = Pick<Walk, "travel" | "advance">;

/** The ground counted from the panel's own middle: for what is compared within one panel. */
export const FROM_THE_MIDDLE: GroundPace = { travel: "on-the-spot", advance: 0 };

/**
 * Ground x of a panel's middle: carried forward by the advance since frame 1, or, in a walk that
 * travels, as set by hand. So a walk on the spot, whose ground slides back under the walker, and one
 * that travels are read by one rule. On the spot a place left over from travelling is kept on the
 * sheet and not followed: nothing there shows it or could change it.
 *
 * Units:   leg lengths; not a number when the walk has no usable advance
 */
export function placeOf(
  panel: Pick<WalkPanel, "place" | "frame">,
  { travel, advance }: GroundPace,
): number {
  const byHand = travel === "travelling" ? panel.place : null;
  return byHand ?? advance * (panel.frame - 1);
}

/** A side-view mark in ground space, or null where it, the leg length or the place is missing. */
export function groundMark(
  panel: WalkPanel,
  joint: JointName,
  pace: GroundPace,
  leg: LegLength,
): GroundMark | null {
  const mark = markOf(panel.marks.side, joint);
  const place = placeOf(panel, pace);
  if (mark === null || leg.kind === "cannot-tell" || !Number.isFinite(place)) return null;
  const point = sideToGround(mark, { place, legLength: leg.value });
  return { ...point, plusMinus: mark.precision / leg.value };
}
