import { type JointName, type LimbJoint, limbJoint, markOf, SIDES } from "../../body";
import { gathered } from "../../gathered";
import { clearlyBeyond } from "../beyond";
import { byPattern } from "../by-pattern";
import type { Finding, Reading, Remark, Spot } from "../finding";
import { WIDTH, WIDTH_SOURCE } from "../methods/width";
import { isQuiet } from "../quiet";
import { stepWidth } from "../readings/between-feet";
import type { Step } from "../step";
import type { Study } from "../study";
import { WIDTH_TRAITS } from "../traits/step-traits";
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
  if (study.pattern !== null) return byPattern(study, study.pattern, "width", WIDTH_TRAITS);
  if (steps.length === 0) {
    return [cannotTell({ check: "width", side: null, panels: [] }, NEEDS_A_STEP)];
  }
  return study.inStepsWithNext(judge);
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
  return remarkOn(study, { step, next }, { measured, limit });
}

/** A step and the contact that ends it. */
interface Whole {
  readonly step: Step;
  readonly next: WalkPanel;
}

interface Off {
  readonly measured: Reading;
  readonly limit: number;
}

function remarkOn(study: Study, { step, next }: Whole, { measured, limit }: Off): Remark {
  const { weightOn: side } = step;
  const seen = whereSeen(study, step, next);
  const { value, plusMinus, unit } = measured;
  const isWide = limit === WIDTH.to;
  const title = isWide ? "feet far apart" : value < 0 ? "feet cross" : "feet on one line";
  const how = value < 0 ? `cross by ${percent(measured)}` : `are ${percent(measured)}`;
  return {
    kind: "remark",
    check: "width",
    level: "may-show",
    yardstick: study.yardstick,
    side,
    panels: seen.map(({ panel }) => panel.id),
    frames: seen.map(({ panel }) => panel.frame),
    spots: seen.map(({ panel, joints }): Spot => ({ panel: panel.id, view: "front", joints })),
    measured: { value, plusMinus, unit },
    expected: { value: limit, plusMinus: 0, unit: "leg" },
    title: capital(title),
    why: `The feet of ${whoseStep(side)}, to frame ${next.frame}, ${how} of a leg${value < 0 ? "" : " apart"} across the walk; ${100 * WIDTH.from} to ${100 * WIDTH.to} % passes. From the front the figure may seem to ${isWide ? "straddle" : "walk a line, or trip over itself"}.`,
    source: WIDTH_SOURCE,
    beyond: Math.abs(value - limit) / limit,
  };
}

const FOOT: readonly LimbJoint[] = ["ankle", "ball", "heel", "toe"];

interface Seen {
  readonly panel: WalkPanel;
  readonly joints: readonly JointName[];
}

/** Where both feet are down and marked; where they are not marked there, at the passings of each. */
function whereSeen({ steps }: Study, step: Step, next: WalkPanel): readonly Seen[] {
  const marked = (panel: WalkPanel, joint: JointName) => markOf(panel.marks.front, joint) !== null;
  const together = FOOT.map((joint) => SIDES.map((side) => limbJoint(side, joint))).find((pair) =>
    pair.every((joint) => marked(next, joint)),
  );
  if (together !== undefined) return [{ panel: next, joints: together }];
  const following = steps.find(({ contact }) => contact === next);
  return gathered([step, following], (one): Seen[] => {
    const { passing, weightOn } = one ?? { passing: null, weightOn: null };
    if (passing === null || weightOn === null) return [];
    const joints = FOOT.map((joint) => limbJoint(weightOn, joint));
    const found = joints.find((joint) => marked(passing, joint));
    return found === undefined ? [] : [{ panel: passing, joints: [found] }];
  });
}
