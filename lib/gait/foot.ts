import { type LegLength, type LimbJoint, limbJoint, SIDES, type Side } from "../body";
import { greatestOf } from "./beyond";
import { perPanel } from "./per-panel";
import { type GroundMark, seenMark } from "./seen-mark";
import type { WalkPanel } from "./walk";

/** A point of the sole that was marked. Leg lengths, y up from the ground. */
export interface FootPoint extends GroundMark {
  readonly joint: FootJoint;
}

const FOOT_JOINTS = ["heel", "ball", "toe"] as const satisfies readonly LimbJoint[];
export type FootJoint = (typeof FOOT_JOINTS)[number];

/** The marked points of a foot, heel first. What only follows from the stand is not among them. */
export function footPoints(panel: WalkPanel, side: Side, leg: LegLength): readonly FootPoint[] {
  return bothFeet(panel, leg)[side];
}

const bothFeet = perPanel((panel, leg) => ({
  left: pointsOf(panel, "left", leg),
  right: pointsOf(panel, "right", leg),
}));

function pointsOf(panel: WalkPanel, side: Side, leg: LegLength): readonly FootPoint[] {
  const points: FootPoint[] = [];
  for (const joint of FOOT_JOINTS) {
    const mark = seenMark(panel, limbJoint(side, joint), leg);
    if (mark !== null) points.push({ x: mark.x, y: mark.y, plusMinus: mark.plusMinus, joint });
  }
  return points;
}

/** A foot whose height is known has its heel marked, and its ball or toe. */
export function isWholeFoot(points: readonly FootPoint[]): boolean {
  return points.length > 1 && points.some(({ joint }) => joint === "heel");
}

/** What a foot needs for its height to be known. */
export function needsFoot(side: Side): string {
  return `the ${side} heel and ball or toe marked in the side view`;
}

/** The lowest point, of a flat foot its heel; null of none. */
export function lowest(points: readonly FootPoint[]): FootPoint | null {
  return greatestOf(points, ({ y }) => -y) ?? null;
}

/**
 * The feet that stand on the ground in a pose: both on the stand and at a contact, else the one
 * that carries. Null where nobody said which.
 */
export function bearingFeet({
  pose,
  weightOn,
}: Pick<WalkPanel, "pose" | "weightOn">): readonly Side[] | null {
  if (pose === "stand" || pose === "contact") return SIDES;
  return weightOn === null ? null : [weightOn];
}

/**
 * Where both feet are along the walk, counted from the panel's middle: by their ankles where both
 * were marked, else by their heels. What only follows from the stand is too rough for this.
 */
export const feetAlong = perPanel((panel, leg) => {
  const at = (side: Side, joint: LimbJoint) => seenMark(panel, limbJoint(side, joint), leg);
  for (const joint of ["ankle", "heel"] as const) {
    const left = at("left", joint);
    const right = at("right", joint);
    if (left !== null && right !== null) return { joint, left, right };
  }
  return null;
});
