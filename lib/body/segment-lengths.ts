import { gathered } from "../gathered";
import { distance, rootSumSquare } from "../geometry";
import { type JointName, SIDES, type Side } from "./joint";
import type { ViewMarks } from "./mark";
import { markOf } from "./mark-of";

/** Bones that have a length of their own; a foot is told from heel to toe. */
export const SEGMENTS = ["thigh", "shank", "foot", "upper-arm", "forearm", "neck"] as const;
export type Segment = (typeof SEGMENTS)[number];

/** A bone as it is drawn in one view. Units: panel units, ± likewise. */
export interface SegmentLength {
  readonly segment: Segment;
  /** null for what belongs to neither side. */
  readonly side: Side | null;
  readonly ends: readonly [JointName, JointName];
  readonly value: number;
  readonly plusMinus: number;
}

/**
 * The length of every bone whose two ends are marked in a view, from the side as long as it is, from ahead as
 * far as it does not point at the viewer.
 *
 * Shapes:  bones from the leg up, left before right; what is not marked is not among them
 * Units:   panel units
 * Errors:  none
 */
export function segmentLengths(marks: ViewMarks): readonly SegmentLength[] {
  return gathered(ENDS, ({ segment, side, ends }): SegmentLength[] => {
    const from = markOf(marks, ends[0]);
    const to = markOf(marks, ends[1]);
    if (from === null || to === null) return [];
    const plusMinus = rootSumSquare(from.precision, to.precision);
    return [{ segment, side, ends, value: distance(from, to), plusMinus }];
  });
}

const LIMBS: Readonly<
  Record<Exclude<Segment, "neck">, (side: Side) => readonly [JointName, JointName]>
> = {
  thigh: (side) => [`${side}-hip`, `${side}-knee`],
  shank: (side) => [`${side}-knee`, `${side}-ankle`],
  foot: (side) => [`${side}-heel`, `${side}-toe`],
  "upper-arm": (side) => [`${side}-shoulder`, `${side}-elbow`],
  forearm: (side) => [`${side}-elbow`, `${side}-wrist`],
};

type Ends = Pick<SegmentLength, "segment" | "side" | "ends">;

const ENDS: readonly Ends[] = SEGMENTS.flatMap((segment): Ends[] => {
  if (segment === "neck") return [{ segment, side: null, ends: ["neck", "head"] }];
  return SIDES.map((side) => ({ segment, side, ends: LIMBS[segment](side) }));
});
