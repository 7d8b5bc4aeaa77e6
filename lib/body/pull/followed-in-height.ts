import { gathered } from "../../gathered";
import type { View } from "../../geometry";
import { carriersOf } from "../carried-by";
import { JOINTS, type JointName, SIDES } from "../joint";
import type { ViewMarks } from "../mark";
import { markOf } from "../mark-of";
import { putMark, shiftedMarks } from "../shifted-marks";
import { armOf, type Limb, legOf, middleOf, type Seen } from "./limb";

/**
 * The other view's marks after one view's were moved: every joint goes up or down as much as it did
 * there, and stays where it is sideways. A joint that only the other view has goes with the one that
 * carries it. From the side knees and elbows are solved, so bones keep their lengths; from ahead no bone
 * is made longer than it is.
 *
 * Shapes:  one view's marks before and after, the other view's marks and which view it is
 * Units:   panel units, y down
 * Errors:  none; a joint that is not marked is not invented
 */
export function followedInHeight(
  before: ViewMarks,
  after: ViewMarks,
  other: ViewMarks,
  view: View,
): ViewMarks {
  let marks = other;
  for (const joint of JOINTS) {
    marks = shiftedMarks(marks, [joint], { x: 0, y: riseOf(before, after, joint) });
  }
  if (marks === other) return other;
  const seen = { view, side: view === "front" ? after : null };
  for (const limb of limbsOf(other, seen)) {
    marks = view === "side" ? solved(marks, limb) : notLonger(marks, limb);
  }
  return marks;
}

/** A front view's marks with no limb longer than the side view or the drawing itself has it. */
export function withoutLong(front: ViewMarks, side: ViewMarks): ViewMarks {
  return limbsOf(front, { view: "front", side }).reduce(notLonger, front);
}

function limbsOf(marks: ViewMarks, seen: Seen): Limb[] {
  return gathered(SIDES, (side) => [legOf(marks, side, seen), armOf(marks, side, seen)]).filter(
    (limb) => limb !== null,
  );
}

/** By how much a joint went down, panel units; 0 where nothing tells. */
function riseOf(before: ViewMarks, after: ViewMarks, joint: JointName): number {
  for (const carriers of carriersOf(joint)) {
    const rises = gathered(carriers, (name) => {
      const was = markOf(before, name);
      const is = markOf(after, name);
      return was === null || is === null ? [] : [is.y - was.y];
    });
    if (rises.length > 0) return rises.reduce((sum, rise) => sum + rise, 0) / rises.length;
  }
  return 0;
}

/** From the side: the middle joint where the bones have it, as long as its neighbours are. */
function solved(marks: ViewMarks, limb: Limb): ViewMarks {
  const root = markOf(marks, limb.names.root);
  const end = markOf(marks, limb.names.end);
  if (root === null || end === null) return marks;
  const still = sameWay(limb, root, end);
  const middle = still === null ? middleOf(limb, root, end) : still;
  return putMark(marks, limb.names.middle, middle);
}

/** A limb that was moved whole is not bent. */
function sameWay(limb: Limb, root: { x: number; y: number }, end: { x: number; y: number }) {
  const way = { x: root.x - limb.root.x, y: root.y - limb.root.y };
  const same = way.x === end.x - limb.end.x && way.y === end.y - limb.end.y;
  return same ? { x: limb.middle.x + way.x, y: limb.middle.y + way.y } : null;
}

/** From ahead: the middle joint up or down until neither bone is longer than it is. */
function notLonger(marks: ViewMarks, limb: Limb): ViewMarks {
  const [root, middle, end] = [limb.names.root, limb.names.middle, limb.names.end].map((joint) =>
    markOf(marks, joint),
  );
  if (root == null || middle == null || end == null) return marks;
  const up = (length: number, aside: number) => Math.sqrt(Math.max(0, length ** 2 - aside ** 2));
  const byRoot = up(limb.upper, middle.x - root.x);
  const byEnd = up(limb.lower, middle.x - end.x);
  const least = Math.max(root.y - byRoot, end.y - byEnd);
  const most = Math.min(root.y + byRoot, end.y + byEnd);
  if (least > most) return marks; // the whole limb is too far apart: nothing here can shorten it
  const y = Math.min(most, Math.max(least, middle.y));
  return y === middle.y ? marks : putMark(marks, limb.names.middle, { x: middle.x, y });
}
