import { type JointName, type LimbJoint, limbJoint, markOf, SIDES } from "../../body";
import { clearlyBeyond } from "../beyond";
import type { Finding, Reading, Remark, Spot } from "../finding";
import { WIDTH, WIDTH_SOURCE } from "../methods/width";
import { isQuiet } from "../quiet";
import { stepWidth } from "../readings/between-feet";
import type { Step } from "../step";
import type { Study } from "../study";
import type { WalkPanel } from "../walk";
import { capital, percent } from "../words";
import { cannotTell, NEEDS_A_STEP, sound } from "./answers";
import { whoseStep } from "./step-words";

/**
 * Do the feet stand as far apart, seen from the front, as feet do? Nearer than that they walk a line or
 * cross, wider they straddle.
 *
 * Shapes:  one answer a step; a remark points at both feet where the next one has landed
 * Units:   leg lengths across the walk
 * Errors:  none; without both feet in the front view it answers "cannot-tell"
 * Source:  beside the limit, in its method
 */
export function width(study: Study): readonly Finding[] {
  const { walk, steps } = study;
  if (isQuiet(walk.kind, "width")) return [];
  if (steps.length === 0) {
    return [cannotTell({ check: "width", side: null, panels: [] }, NEEDS_A_STEP)];
  }
  return steps.map((step) => judge(study, step));
}

function judge(study: Study, step: Step): Finding {
  const { weightOn: side, contact, next } = step;
  const about = { check: "width", side, panels: [next ?? contact] } as const;
  const measured = stepWidth(study, step);
  if (measured.kind === "cannot-tell") return cannotTell(about, measured.needs);
  const { value, plusMinus } = measured;
  const isWide = clearlyBeyond(value, plusMinus, WIDTH.to);
  const isNarrow = clearlyBeyond(-value, plusMinus, -WIDTH.from);
  if (next === null || !(isWide || isNarrow)) return sound(about, measured);
  const limit = isWide ? WIDTH.to : WIDTH.from;
  return remarkOn(study, step, next, { measured, limit });
}

interface Off {
  readonly measured: Reading;
  readonly limit: number;
}

function remarkOn(
  { yardstick }: Study,
  { weightOn: side }: Step,
  next: WalkPanel,
  { measured, limit }: Off,
): Remark {
  const { value, plusMinus, unit } = measured;
  const isWide = limit === WIDTH.to;
  const title = isWide ? "feet far apart" : value < 0 ? "feet cross" : "feet on one line";
  const how = value < 0 ? `cross by ${percent(measured)}` : `are ${percent(measured)}`;
  return {
    kind: "remark",
    check: "width",
    level: "may-show",
    yardstick,
    side,
    panels: [next.id],
    frames: [next.frame],
    spots: [feetIn(next)],
    measured: { value, plusMinus, unit },
    expected: { value: limit, plusMinus: 0, unit: "leg" },
    title: capital(title),
    why: `The feet of ${whoseStep(side)}, to frame ${next.frame}, ${how} of a leg${value < 0 ? "" : " apart"} across the walk; ${100 * WIDTH.from} to ${100 * WIDTH.to} % passes. From the front the figure may seem to ${isWide ? "straddle" : "walk a line, or trip over itself"}.`,
    source: WIDTH_SOURCE,
    beyond: Math.abs(value - limit) / limit,
  };
}

const FOOT: readonly LimbJoint[] = ["ankle", "ball", "heel", "toe"];

/** Both feet in the front view, by the first joint that both have marked there. */
function feetIn({ id, marks }: WalkPanel): Spot {
  const pair = (joint: LimbJoint): JointName[] => SIDES.map((side) => limbJoint(side, joint));
  const marked = (joint: JointName) => markOf(marks.front, joint) !== null;
  const found = FOOT.find((joint) => pair(joint).every(marked)) ?? "ankle";
  return { panel: id, view: "front", joints: pair(found) };
}
