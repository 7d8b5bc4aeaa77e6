import type { PoseMarks, ViewMarks } from "../../body";
import {
  hundredth,
  type JointName,
  limbJoint,
  markOf,
  type Side,
  shiftedMarks,
  solvedKnee,
} from "../../body";
import type { CannotPass } from "./passing";

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
      front = shiftedMarks(front, [joint], { x: 0, y: is.y - was.y });
    }
  }
  return { side, front };
}
