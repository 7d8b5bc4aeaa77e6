import { gathered } from "../../gathered";
import { type Disc, distance, nearestInDiscs, type Point } from "../../geometry";
import { BODY, footJoints } from "../body-parts";
import { SIDES, type Side } from "../joint";
import type { ViewMarks } from "../mark";
import { markOf } from "../mark-of";
import { putMark, shiftedMarks } from "../shifted-marks";
import { limbJoint } from "../side";
import { footEnd, heldEnd, type Limb, legOf, middleOf, reachOf, type Seen } from "./limb";

/**
 * The hips and all that they carry moved by a way, as far as the legs of planted feet reach. Feet are
 * kept and knees solved; a free foot whose leg does not reach comes along.
 */
export function movedBody(
  before: ViewMarks,
  wish: Point,
  pinned: readonly Side[],
  seen: Seen,
): ViewMarks {
  const legs = SIDES.map((side) => ({ side, leg: legOf(before, side, seen) }));
  const holding = gathered(legs, ({ side, leg }) =>
    leg !== null && pinned.includes(side) ? [leg] : [],
  );
  const by = allowed(wish, holding);
  let marks = shiftedMarks(before, BODY, by);
  for (const { side, leg } of legs) {
    if (leg === null) marks = hangingKnee(marks, side, by);
    else marks = withLeg(marks, side, leg, { x: leg.root.x + by.x, y: leg.root.y + by.y });
  }
  return marks;
}

/** The way nearest to the wish at which every planted leg still reaches its foot. */
function allowed(wish: Point, legs: readonly Limb[]): Point {
  const [first, second] = legs;
  const rims = gathered([first, second], (leg): Disc[] =>
    leg === undefined
      ? []
      : [{ x: leg.end.x - leg.root.x, y: leg.end.y - leg.root.y, radius: reachOf(leg).most }],
  );
  const near = nearestInDiscs(wish, rims);
  const fits = (way: Point) => legs.every((leg) => reaches(leg, way));
  if (fits(near)) return near;
  // Folded as far as it goes: back toward where it came from.
  let [good, bad] = [0, 1];
  for (let halving = 0; halving < HALVINGS; halving++) {
    const share = (good + bad) / 2;
    if (fits({ x: share * near.x, y: share * near.y })) good = share;
    else bad = share;
  }
  return { x: good * near.x, y: good * near.y };
}

const HALVINGS = 24; // to a ten-millionth of the way
const TINY = 1e-6; // panel units: what rounding may leave

function reaches(leg: Limb, way: Point): boolean {
  const far = distance({ x: leg.root.x + way.x, y: leg.root.y + way.y }, leg.end);
  const { least, most } = reachOf(leg);
  return far >= least - TINY && far <= most + TINY;
}

/** A knee whose foot is not marked hangs on its hip. */
function hangingKnee(marks: ViewMarks, side: Side, by: Point): ViewMarks {
  const hip = markOf(marks, limbJoint(side, "hip"));
  if (hip === null || footEnd(marks, side) !== null) return marks;
  return shiftedMarks(marks, [limbJoint(side, "knee")], by);
}

/** A leg on a hip that moved: its foot where it was, or as near to that as the leg reaches. */
export function withLeg(marks: ViewMarks, side: Side, leg: Limb, hip: Point): ViewMarks {
  const end = heldEnd(leg, hip, leg.end);
  const foot = { x: end.x - leg.end.x, y: end.y - leg.end.y };
  const kept = reaches({ ...leg, root: hip }, { x: 0, y: 0 });
  const moved = kept ? marks : shiftedMarks(marks, footJoints(side), foot);
  return putMark(moved, leg.names.middle, middleOf(leg, hip, kept ? leg.end : end));
}
