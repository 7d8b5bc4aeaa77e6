import type { PoseMarks, ViewMarks } from "../../body";
import { type JointName, limbJoint, type Mark, markOf, type Side, solvedKnee } from "../../body";
import type { CannotPass } from "./passing";

/** A hundredth of a panel unit: far finer than a hand can mark, and shorter to keep. */
export function hundredth(units: number): number {
  return Math.round(units * 100) / 100;
}

/** Marks of one view moved by a way. Panel units, y down. */
export function movedMarks(
  marks: ViewMarks,
  joints: readonly JointName[],
  by: { readonly x: number; readonly y: number },
): ViewMarks {
  const moved: Partial<Record<JointName, Mark>> = {};
  for (const joint of joints) {
    const mark = markOf(marks, joint);
    if (mark === null) continue;
    moved[joint] = { ...mark, x: go(mark.x, by.x), y: go(mark.y, by.y) };
  }
  return { ...marks, ...moved };
}

/** What does not move stays as it is, to the last digit. */
function go(from: number, by: number): number {
  return by === 0 ? from : hundredth(from + by);
}

/**
 * The side view's marks with this side's knee solved for where hip and foot are now, or why the leg
 * does not reach. Panel units; `legUnits` is a leg on the paper.
 */
export function withKnee(
  before: ViewMarks,
  after: ViewMarks,
  side: Side,
  legUnits: number,
): ViewMarks | CannotPass {
  const solved = solvedKnee(before, after, side);
  if (solved.kind === "as-it-is") return after;
  if (solved.kind === "out-of-reach")
    return { kind: "cannot", why: shortBy(solved, side, legUnits) };
  const { x, y, precision } = solved.knee;
  return { ...after, [limbJoint(side, "knee")]: { x: hundredth(x), y: hundredth(y), precision } };
}

function shortBy({ beyond }: { beyond: number | null }, side: Side, legUnits: number): string {
  if (beyond === null) return `the ${side} foot would lie nearer to its hip than the leg folds`;
  const percent = Math.max(0.1, Math.round((1000 * beyond) / legUnits) / 10);
  return `the ${side} leg would have to be ${percent} % of a leg longer`;
}

/**
 * A pose whose front view follows the side view in height: every joint that is marked in both goes up
 * or down by as much as it did from the side. Units: panel units.
 */
export function frontFollows(
  before: PoseMarks,
  side: ViewMarks,
  joints: readonly JointName[],
): PoseMarks {
  let front = before.front;
  for (const joint of joints) {
    const was = markOf(before.side, joint);
    const is = markOf(side, joint);
    if (was !== null && is !== null && was.y !== is.y) {
      front = movedMarks(front, [joint], { x: 0, y: is.y - was.y });
    }
  }
  return { side, front };
}
