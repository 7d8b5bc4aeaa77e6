import { distance, type Point, type View } from "../../geometry";
import { CHEST } from "../body-parts";
import { type JointName, SIDES } from "../joint";
import type { ViewMarks } from "../mark";
import { markOf } from "../mark-of";
import { putMark, shiftedMarks } from "../shifted-marks";
import { limbJoint } from "../side";

/**
 * The chest and all that it carries turned about the hips toward a pull; without hips, moved. From ahead
 * the arms hang from their shoulders as before: turned with the chest they would be seen shorter from
 * the side.
 */
export function turnedChest(before: ViewMarks, joint: JointName, to: Point, view: View): ViewMarks {
  const mark = markOf(before, joint);
  if (mark === null) return before;
  const about = hipsOf(before);
  const way = { x: to.x - mark.x, y: to.y - mark.y };
  if (about === null) return shiftedMarks(before, CHEST, way);
  const turn = direction(about, to) - direction(about, mark);
  if (distance(about, to) === 0 || distance(about, mark) === 0) return before;
  if (view === "side") return turnedMarks(before, CHEST, about, turn);
  return withHangingArms(before, turnedMarks(before, TRUNK, about, turn));
}

const TRUNK: readonly JointName[] = ["head", "neck", "load", "left-shoulder", "right-shoulder"];

function withHangingArms(before: ViewMarks, after: ViewMarks): ViewMarks {
  return SIDES.reduce((marks, side) => {
    const was = markOf(before, limbJoint(side, "shoulder")) ?? markOf(before, "neck");
    const is = markOf(after, limbJoint(side, "shoulder")) ?? markOf(after, "neck");
    if (was === null || is === null) return marks;
    const arm = [limbJoint(side, "elbow"), limbJoint(side, "wrist")];
    return shiftedMarks(marks, arm, { x: is.x - was.x, y: is.y - was.y });
  }, after);
}

/** The head turned about the neck. */
export function turnedHead(before: ViewMarks, to: Point): ViewMarks {
  const neck = markOf(before, "neck");
  const head = markOf(before, "head");
  if (head === null) return before;
  if (neck === null) return putMark(before, "head", to);
  return putMark(before, "head", toward(neck, to, distance(neck, head)) ?? head);
}

/** Marks turned about a point. Radians, as the page's y runs: from x to y. */
export function turnedMarks(
  marks: ViewMarks,
  joints: readonly JointName[],
  about: Point,
  turn: number,
): ViewMarks {
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  let turned = marks;
  for (const joint of joints) {
    const mark = markOf(marks, joint);
    if (mark === null || turn === 0) continue;
    const [x, y] = [mark.x - about.x, mark.y - about.y];
    turned = putMark(turned, joint, {
      x: about.x + x * cos - y * sin,
      y: about.y + x * sin + y * cos,
    });
  }
  return turned;
}

/** The point so far from another, on the way to a third; null where there is no way. */
export function toward(from: Point, to: Point, length: number): Point | null {
  const far = distance(from, to);
  if (far === 0) return null;
  return {
    x: from.x + ((to.x - from.x) * length) / far,
    y: from.y + ((to.y - from.y) * length) / far,
  };
}

export function direction(from: Point, to: Point): number {
  return Math.atan2(to.y - from.y, to.x - from.x);
}

/** The middle of the hips, or the one that is marked. */
function hipsOf(marks: ViewMarks): Point | null {
  const left = markOf(marks, "left-hip");
  const right = markOf(marks, "right-hip");
  if (left === null || right === null) return left ?? right;
  return { x: (left.x + right.x) / 2, y: (left.y + right.y) / 2 };
}
