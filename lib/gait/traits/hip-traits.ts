import { rootSumSquare } from "../../geometry";
import type { StepPose } from "../../motion";
import type { NoReading } from "../answer";
import { greatestOf } from "../beyond";
import type { Trait, TraitReading } from "../by-pattern";
import { whoseStep } from "../checks/step-words";
import type { Spot } from "../finding";
import type { HipHeight } from "../hip-height";
import { NEIGHBOURS } from "../methods/neighbouring-steps";
import type { Step } from "../step";
import { stepHeights } from "../step-heights";
import type { Study } from "../study";
import type { WalkPanel } from "../walk";

/** The hips of each pose over the contact's. */
export const HIP_TRAITS: readonly Trait[] = (["down", "passing", "up"] as const).map((pose) => ({
  name: `the hips at the ${pose}`,
  what: `the hips at the ${pose} stand over the contact's by`,
  below: `the hips at the ${pose} lie under the contact's by`,
  sees: "one step is seen to sink or rise more than the other",
  near: NEIGHBOURS.hips,
  by: "difference",
  pose,
  ...(pose === "up" ? { topic: "hip-order:up" as const } : {}),
  read: (study, step) => overContact(study, step, pose),
}));

/** How far the hips rise and sink from a contact to the next. */
export const RANGE_TRAITS: readonly Trait[] = [
  {
    name: "how far the hips rise and sink",
    what: "the hips rise and sink by",
    sees: "one step is seen to bounce more than the other",
    near: NEIGHBOURS.hipRange,
    by: "difference",
    read: rangeOf,
  },
];

function rangeOf(study: Study, step: Step): TraitReading | NoReading {
  const heights = stepHeights(study, step);
  const whole = step.next === null ? step.panels : [...step.panels, step.next];
  const low = greatestOf(heights, ({ value }) => -value);
  const high = greatestOf(heights, ({ value }) => value);
  if (low === undefined || high === undefined || heights.length < whole.length) {
    return {
      kind: "cannot-tell",
      needs: `the hips marked in every pose of ${whoseStep(step.weightOn)}`,
    };
  }
  const ends = [low, high].toSorted((a, b) => a.panel.frame - b.panel.frame);
  return {
    kind: "read",
    reading: {
      value: high.value - low.value,
      plusMinus: rootSumSquare(high.plusMinus, low.plusMinus),
      unit: "leg",
    },
    panels: ends.map(({ panel }) => panel),
    spots: ends.map(({ panel, view, joints }) => ({ panel: panel.id, view, joints })),
  };
}

function overContact(study: Study, step: Step, pose: StepPose): TraitReading | NoReading {
  const base = hipsOf(study, step, "contact");
  const top = hipsOf(study, step, pose);
  if (base.kind === "cannot-tell") return base;
  if (top.kind === "cannot-tell") return top;
  return {
    kind: "read",
    reading: {
      value: top.hip.value - base.hip.value,
      plusMinus: rootSumSquare(top.hip.plusMinus, base.hip.plusMinus),
      unit: "leg",
    },
    panels: [base.panel, top.panel],
    spots: [base, top].map(spotOf),
  };
}

interface Posed {
  readonly kind: "posed";
  readonly panel: WalkPanel;
  readonly hip: HipHeight;
}

function hipsOf(study: Study, step: Step, pose: StepPose): Posed | NoReading {
  const panel = step[pose];
  const needs = (what: string): NoReading => ({ kind: "cannot-tell", needs: what });
  if (panel === null) return needs(`the ${pose} of ${whoseStep(step.weightOn)} drawn`);
  const hip = study.hipOf(panel);
  if (hip.kind === "value") return { kind: "posed", panel, hip };
  return needs(`the hips marked at the ${pose} of ${whoseStep(step.weightOn)}`);
}

function spotOf({ panel, hip }: Posed): Spot {
  return { panel: panel.id, view: hip.view, joints: hip.joints };
}
