import { type JointName, type LegLength, type Mark, markOf, PANEL } from "../body";
import { rootSumSquare, VIEWS, type View } from "../geometry";
import { answerOf, type NoReading, type Value } from "./answer";
import type { WalkPanel } from "./walk";

/** A hip height and the marks that it was read from. */
export interface HipHeight extends Value {
  readonly view: View;
  readonly joints: readonly JointName[];
}

/**
 * How far one hip may lie from the middle of both: the swing side's hip is lower by 1.3 % of a leg
 * on average at passing, the other is higher by as much, so half of it. Leg lengths.
 * Source: 317 captured steps of 15 people (real-walk statistics, 4: "swing-side hip lower").
 */
export const ONE_HIP_PLUS_MINUS = 0.0065;

/**
 * Height of the hips over the ground line: of the middle between both, or of the one that is
 * marked. The side view is read first, the front view where the side has none.
 *
 * Units:   leg lengths; ± comes from the marks alone, since an error in the leg length makes all
 *          heights of a walk longer or shorter together
 * Errors:  none; without a hip or a leg length it answers "cannot-tell"
 */
export function hipHeight(panel: WalkPanel, leg: LegLength): HipHeight | NoReading {
  if (leg.kind === "cannot-tell") return leg;
  for (const view of VIEWS) {
    const left = markOf(panel.marks[view], "left-hip");
    const right = markOf(panel.marks[view], "right-hip");
    if (left === null && right === null) continue;
    const { y, precision } = middle(left, right, leg.value);
    const height = answerOf((PANEL.groundY - y) / leg.value, precision / leg.value, "leg", NEEDS);
    if (height.kind === "cannot-tell") return height;
    const joints: JointName[] = [];
    if (left !== null) joints.push("left-hip");
    if (right !== null) joints.push("right-hip");
    return {
      kind: "value",
      value: height.value,
      plusMinus: height.plusMinus,
      unit: height.unit,
      view,
      joints,
    };
  }
  return { kind: "cannot-tell", needs: NEEDS };
}

const NEEDS = "a hip marked";

function middle(left: Mark | null, right: Mark | null, legUnits: number) {
  if (left !== null && right !== null) {
    const precision = rootSumSquare(left.precision, right.precision) / 2;
    return { y: (left.y + right.y) / 2, precision };
  }
  const only = left ?? right;
  const y = only?.y ?? Number.NaN;
  const own = only?.precision ?? Number.NaN;
  return { y, precision: rootSumSquare(own, ONE_HIP_PLUS_MINUS * legUnits) };
}
