import type { JointName, Side } from "../../body";
import { rootSumSquare } from "../../geometry";
import { clearlyBeyond, greatestOf } from "../beyond";
import type { Reading, Remark } from "../finding";
import type { Study } from "../study";
import type { WalkPanel } from "../walk";
import { capital, percent } from "../words";

/** What a limit of 0 is ranked by: a hundredth of a leg. */
const RANKED_BY = 0.01;

/** A mark that the weight is to stay ahead of (`stays` 1) or behind (-1), by so much. Leg lengths. */
export interface Bound {
  readonly joint: JointName;
  readonly stays: 1 | -1;
  readonly limit: number;
  /** Weight less mark, along the walk. */
  readonly measured: Reading;
}

export interface Weight {
  readonly x: number;
  readonly plusMinus: number;
}

/** Holds a weight against a mark. */
export function bound(
  weight: Weight,
  mark: Weight & { readonly joint: JointName },
  stays: 1 | -1,
  limit: number,
): Bound {
  const plusMinus = rootSumSquare(weight.plusMinus, mark.plusMinus);
  const measured: Reading = { value: weight.x - mark.x, plusMinus, unit: "leg" };
  return { joint: mark.joint, stays, limit, measured };
}

/** How far beyond its limit a bound lies; below 0 is within. */
function excess({ stays, limit, measured }: Bound): number {
  return stays * (limit - measured.value);
}

/** The bound that is broken by most, or null when none clearly is. */
export function worst(bounds: readonly Bound[]): Bound | null {
  const broken = bounds.filter((one) => clearlyBeyond(excess(one), one.measured.plusMinus, 0));
  return greatestOf(broken, excess) ?? null;
}

/** What a remark says beside the bound that is broken. */
export interface Off {
  readonly found: Bound;
  readonly joints: readonly JointName[];
  /** "At the left passing, frame 19, the hips are". */
  readonly what: string;
  /** What is held against it: "people have them between their feet". */
  readonly asks: string;
  readonly source: string;
}

/** The remark on a weight that is past its bound. */
export function weightRemark(study: Study, panel: WalkPanel, side: Side | null, off: Off): Remark {
  const { found, joints, what, asks, source } = off;
  const { measured, limit, stays, joint } = found;
  const behind = stays > 0;
  const way = measured.value < 0 ? "behind" : "ahead of";
  const mark = joint.replace("-", " ");
  return {
    kind: "remark",
    check: "weight-side",
    level: "shows",
    yardstick: study.yardstick,
    side,
    panels: [panel.id],
    frames: [panel.frame],
    spots: [{ panel: panel.id, view: "side", joints }],
    measured,
    expected: { value: limit, plusMinus: 0, unit: "leg" },
    title: capital(`weight is ${behind ? "behind" : "ahead of"} ${bearing(panel, side)}`),
    why: `${what} ${percent(measured)} of a leg ${way} the ${mark}; ${asks}. The figure will be seen to ${behind ? "fall backward" : "fall forward"}.`,
    source,
    beyond: excess(found) / (Math.abs(limit) || RANKED_BY),
  };
}

function bearing({ pose }: WalkPanel, side: Side | null): string {
  return pose === "passing" && side !== null ? `the ${side} foot` : "the feet";
}
