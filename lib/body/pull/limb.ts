import { type Disc, distance, nearestInDiscs, type Point, type View } from "../../geometry";
import type { JointName, Side } from "../joint";
import type { ViewMarks } from "../mark";
import { markOf } from "../mark-of";
import { limbJoint } from "../side";
import { type Bend, bendOf, middleJoint } from "../two-bone";

/**
 * A limb of two bones with all three joints marked. From the side its bones keep their lengths; from
 * ahead they are seen foreshortened, so there the lengths are the longest that they may be seen.
 */
export interface Limb {
  readonly view: View;
  readonly names: { readonly root: JointName; readonly middle: JointName; readonly end: JointName };
  readonly root: Point;
  readonly middle: Point;
  readonly end: Point;
  readonly upper: number;
  readonly lower: number;
  readonly bend: Bend;
}

/** Where a pose is to be measured: the view that is moved, and the side view's marks for one from ahead. */
export interface Seen {
  readonly view: View;
  readonly side: ViewMarks | null;
}

/** The side view's walker goes to the page's right: his knees point there, his elbows back. */
const KNEE: Bend = -1;
const ELBOW: Bend = 1;

/** The leg from hip to ankle; where the ankle is not marked the heel ends it, as in the quick set. */
export function legOf(marks: ViewMarks, side: Side, seen: Seen): Limb | null {
  const end = footEnd(marks, side);
  if (end === null) return null;
  const names = { root: limbJoint(side, "hip"), middle: limbJoint(side, "knee"), end };
  return limbOf(marks, names, seen, KNEE);
}

export function armOf(marks: ViewMarks, side: Side, seen: Seen): Limb | null {
  const names = {
    root: limbJoint(side, "shoulder"),
    middle: limbJoint(side, "elbow"),
    end: limbJoint(side, "wrist"),
  };
  return limbOf(marks, names, seen, ELBOW);
}

/** The joint that ends a leg: its ankle, else its heel; null where neither is marked. */
export function footEnd(marks: ViewMarks, side: Side): JointName | null {
  for (const part of ["ankle", "heel"] as const) {
    const joint = limbJoint(side, part);
    if (markOf(marks, joint) !== null) return joint;
  }
  return null;
}

function limbOf(marks: ViewMarks, names: Limb["names"], seen: Seen, straight: Bend): Limb | null {
  const [root, middle, end] = [names.root, names.middle, names.end].map((j) => markOf(marks, j));
  if (root == null || middle == null || end == null) return null;
  const upper = longest(seen, names.root, names.middle, distance(root, middle));
  const lower = longest(seen, names.middle, names.end, distance(middle, end));
  if (!(upper > 0 && lower > 0)) return null;
  const bend = bendOf(root, middle, end) ?? straight;
  return { view: seen.view, names, root, middle, end, upper, lower, bend };
}

function longest({ view, side }: Seen, from: JointName, to: JointName, here: number): number {
  const start = view === "front" && side !== null ? markOf(side, from) : null;
  const end = side === null ? null : markOf(side, to);
  return start === null || end === null ? here : Math.max(here, distance(start, end));
}

/** How near a limb's end can come to its root, and how far away from it. */
export function reachOf({ view, upper, lower }: Limb) {
  return { least: view === "side" ? Math.abs(upper - lower) : 0, most: upper + lower };
}

/** Where a limb's end comes to lie that is pulled: straight toward the pull, as far as it reaches. */
export function heldEnd(limb: Limb, root: Point, wish: Point): Point {
  const { least, most } = reachOf(limb);
  const far = distance(root, wish);
  const held = Math.min(most, Math.max(least, far));
  if (held === far) return wish;
  if (far === 0) return limb.end;
  return {
    x: root.x + ((wish.x - root.x) * held) / far,
    y: root.y + ((wish.y - root.y) * held) / far,
  };
}

/** Knee or elbow once root and end are elsewhere: on the side where it was drawn. */
export function middleOf(limb: Limb, root: Point, end: Point): Point {
  return limb.view === "side" ? bent(limb, root, end) : between(limb, root, end);
}

function bent({ upper, lower, bend, middle }: Limb, root: Point, end: Point): Point {
  const at = middleJoint(root, end, { upper, lower, bend });
  if (at !== null) return at;
  const far = distance(root, end);
  if (far === 0) return middle;
  // Stretched straight, or folded flat where the end is too near.
  const along =
    far >= upper + lower ? (far * upper) / (upper + lower) : upper > lower ? upper : -upper;
  return {
    x: root.x + ((end.x - root.x) * along) / far,
    y: root.y + ((end.y - root.y) * along) / far,
  };
}

/** From ahead a joint goes along with both neighbours, the more with the nearer. */
function between(limb: Limb, root: Point, end: Point): Point {
  const toRoot = distance(limb.root, limb.middle);
  const toEnd = distance(limb.middle, limb.end);
  const share = toRoot + toEnd === 0 ? 0.5 : toRoot / (toRoot + toEnd);
  const go = (axis: "x" | "y") =>
    limb.middle[axis] +
    (1 - share) * (root[axis] - limb.root[axis]) +
    share * (end[axis] - limb.end[axis]);
  return nearestInDiscs({ x: go("x"), y: go("y") }, discs(limb, root, end));
}

/** Where a joint between a root and an end may be: near enough to both. */
export function discs({ upper, lower }: Limb, root: Point, end: Point): Disc[] {
  return [
    { x: root.x, y: root.y, radius: upper },
    { x: end.x, y: end.y, radius: lower },
  ];
}
