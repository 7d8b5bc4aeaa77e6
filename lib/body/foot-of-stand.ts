import { gathered } from "../gathered";
import { rootSumSquare } from "../geometry";
import { type LimbJoint, SIDES, type Side } from "./joint";
import type { Mark, ViewMarks } from "./mark";
import { markOf } from "./mark-of";
import { limbJoint } from "./side";

/**
 * How exactly a joint is known that follows from the stand's foot instead of being marked: a share
 * of a leg. Points made by a foot model are good to 3 %, by the captured walks' own account.
 */
export const FOOT_MODEL_PRECISION = 0.03;

const FOLLOWS: readonly LimbJoint[] = ["ankle", "ball"];

/**
 * A side view's marks with the ankles and balls that follow from the stand's foot, laid onto the
 * heel and toe that were marked. A foot bends at the ball and a hand draws it a little longer or
 * shorter, so the foot is turned and laid on the heel, not stretched.
 *
 * Units:   panel units; `legUnits` is a leg on the paper
 * Errors:  none; what cannot follow stays unmarked, and what was marked is never replaced
 */
export function withFootOfStand(marks: ViewMarks, stand: ViewMarks, legUnits: number): ViewMarks {
  const added = gathered(SIDES, (side) => followers(marks, stand, side, legUnits));
  return added.length === 0 ? marks : { ...marks, ...Object.fromEntries(added) };
}

function followers(marks: ViewMarks, stand: ViewMarks, side: Side, legUnits: number) {
  const heel = markOf(marks, limbJoint(side, "heel"));
  const toe = markOf(marks, limbJoint(side, "toe"));
  const standHeel = markOf(stand, limbJoint(side, "heel"));
  const standToe = markOf(stand, limbJoint(side, "toe"));
  if (heel === null || toe === null || standHeel === null || standToe === null) return [];
  const turn = direction(heel, toe) - direction(standHeel, standToe);
  if (!Number.isFinite(turn)) return [];
  return gathered(FOLLOWS, (joint): [string, Mark][] => {
    const model = markOf(stand, limbJoint(side, joint));
    if (model === null || markOf(marks, limbJoint(side, joint)) !== null) return [];
    const from = { x: model.x - standHeel.x, y: model.y - standHeel.y };
    const mark: Mark = {
      x: heel.x + from.x * Math.cos(turn) - from.y * Math.sin(turn),
      y: heel.y + from.x * Math.sin(turn) + from.y * Math.cos(turn),
      precision: rootSumSquare(heel.precision, FOOT_MODEL_PRECISION * legUnits),
    };
    return [[limbJoint(side, joint), mark]];
  });
}

function direction(from: Mark, to: Mark): number {
  return Math.atan2(to.y - from.y, to.x - from.x);
}
