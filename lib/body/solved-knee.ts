import { distance } from "../geometry";
import type { Side } from "./joint";
import type { Mark, ViewMarks } from "./mark";
import { markOf } from "./mark-of";
import { limbJoint } from "./side";
import { type Bend, bendOf, beyondReach, middleJoint } from "./two-bone";

/** What becomes of a knee when its hip or its foot has moved. */
export type SolvedKnee =
  | { readonly kind: "solved"; readonly knee: Mark }
  /** The leg is not marked enough to have a length, or nothing of it moved. */
  | { readonly kind: "as-it-is" }
  /** `beyond`: how much longer the leg would have to be; null: the foot is too near. Panel units. */
  | { readonly kind: "out-of-reach"; readonly beyond: number | null };

/** The side view's walker goes to the page's right, and so do his knees. */
const FORWARD: Bend = -1;

/**
 * A knee drawn no farther past straight than this is drawn straight, and by hand: it does not say that it
 * bends back. Radians (5°).
 * Source: through a stride a knee is bent between −1 and 67° (Winter 2009, table A.1; Schwartz, Rozumalski &
 * Trost 2008, J Biomech 41:1639); the rest is room for the hand, common practice, no source
 */
export const KNEE_STRAIGHT_WITHIN = (5 * Math.PI) / 180;

/**
 * The knee of a side view after hip or foot moved: thigh and shank keep the lengths and the side they
 * had; a knee that was drawn straight bends forward. Where the ankle is not marked, the heel ends the shank, as in the quick set.
 *
 * Units:   panel units, y down
 * Errors:  none
 */
export function solvedKnee(before: ViewMarks, after: ViewMarks, side: Side): SolvedKnee {
  const knee = markOf(before, limbJoint(side, "knee"));
  const hip = ends(before, after, side, "hip");
  const foot = ends(before, after, side, "ankle") ?? ends(before, after, side, "heel");
  if (knee === null || hip === null || foot === null) return { kind: "as-it-is" };
  if (same(hip.was, hip.is) && same(foot.was, foot.is)) return { kind: "as-it-is" };
  const bones = {
    upper: distance(hip.was, knee),
    lower: distance(knee, foot.was),
    bend: sideOf(hip.was, knee, foot.was),
  };
  if (!(bones.upper > 0 && bones.lower > 0)) return { kind: "as-it-is" };
  const at = middleJoint(hip.is, foot.is, bones);
  if (at !== null) return { kind: "solved", knee: { ...at, precision: knee.precision } };
  const beyond = beyondReach(hip.is, foot.is, bones);
  return { kind: "out-of-reach", beyond: beyond > 0 ? beyond : null };
}

/** The side to which a knee bends; forward where it is as good as straight. */
function sideOf(hip: Mark, knee: Mark, foot: Mark): Bend {
  const thigh = Math.atan2(knee.y - hip.y, knee.x - hip.x);
  const shank = Math.atan2(foot.y - knee.y, foot.x - knee.x);
  const straight = Math.cos(thigh - shank) >= Math.cos(KNEE_STRAIGHT_WITHIN);
  return straight ? FORWARD : (bendOf(hip, knee, foot) ?? FORWARD);
}

function ends(before: ViewMarks, after: ViewMarks, side: Side, joint: "hip" | "ankle" | "heel") {
  const was = markOf(before, limbJoint(side, joint));
  const is = markOf(after, limbJoint(side, joint));
  return was === null || is === null ? null : { was, is };
}

function same(one: Mark, other: Mark): boolean {
  return one.x === other.x && one.y === other.y;
}
