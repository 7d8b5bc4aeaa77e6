import type { Side } from "../body";
import { gathered } from "../gathered";
import { isStepPose, type StepPose } from "../motion";
import type { NoReading } from "./answer";
import { stepFrames } from "./expected-frames";
import type { Step } from "./step";
import type { Study } from "./study";
import type { Walk } from "./walk";
import { sided } from "./words";

/** What a walk is held against where its yardstick goes by a step. */
export interface Against {
  /** Ids of approved panels, the one that was approved first at the head. */
  readonly approved?: readonly string[];
  /** The walk that is the rule by the yardstick version: a frozen version, another sheet, a captured walk. */
  readonly version?: Walk;
}

/** The step that others are held against, with the walk that it was read in. */
export interface Pattern {
  readonly kind: "pattern";
  readonly study: Study;
  readonly step: Step;
  /** The first complete step on the other foot, for what is not to be mirrored; null where there is none. */
  readonly partner: Step | null;
}

/**
 * The step that a walk goes by. By this-walk the one whose panels were all approved first, or else the
 * first complete one; by version the first complete one of the walk that was handed in.
 *
 * Errors:  none; null by trade and life; with no complete step it says what is needed
 */
export function patternOf(
  study: Study,
  { approved = [], version }: Against,
  read: (walk: Walk) => Study,
): Pattern | NoReading | null {
  if (study.yardstick === "this-walk") return firstOf(study, approved) ?? NEEDS_A_WHOLE_STEP;
  if (study.yardstick !== "version") return null;
  return version === undefined ? NEEDS_A_VERSION : (firstOf(read(version), []) ?? NEEDS_ITS_STEP);
}

const WHOLE = "contact, down and passing, and the other foot's contact after them";
const NEEDS_A_WHOLE_STEP: NoReading = {
  kind: "cannot-tell",
  needs: `one complete step to go by: ${WHOLE}`,
};
const NEEDS_A_VERSION: NoReading = { kind: "cannot-tell", needs: "another walk to go by" };
const NEEDS_ITS_STEP: NoReading = {
  kind: "cannot-tell",
  needs: `one complete step in the walk to go by: ${WHOLE}`,
};

function firstOf(study: Study, approved: readonly string[]): Pattern | null {
  const complete = study.steps.filter(isComplete);
  const step = firstApproved(complete, approved) ?? complete[0];
  if (step === undefined) return null;
  const partner = complete.find(({ weightOn }) => weightOn !== step.weightOn) ?? null;
  return { kind: "pattern", study, step, partner };
}

function isComplete(step: Step): boolean {
  const { weightOn, down, passing } = step;
  return weightOn !== null && down !== null && passing !== null && stepFrames(step) !== null;
}

/** Of the steps whose panels are all approved, the one whose last panel was approved soonest. */
function firstApproved(steps: readonly Step[], approved: readonly string[]): Step | undefined {
  const since = ({ panels }: Step) => {
    const when = panels.map(({ id }) => approved.indexOf(id));
    return when.includes(-1) ? Number.POSITIVE_INFINITY : Math.max(...when);
  };
  const [first] = steps.toSorted((a, b) =>
    since(a) < since(b) ? -1 : since(a) > since(b) ? 1 : 0,
  );
  return first !== undefined && Number.isFinite(since(first)) ? first : undefined;
}

/**
 * The step that this one is held against, in the pattern's walk. A version's left step is the rule for the
 * left step and its right for the right; within a walk one step is the rule for both sides, mirrored,
 * unless the walk limps.
 *
 * @returns null for the pattern step itself, which is as it is
 */
export function patternFor(pattern: Pattern, of: Study, step: Step): Step | null {
  const rule = ruleFor(pattern, of, step.weightOn);
  return pattern.study.walk === of.walk && rule.contact === step.contact ? null : rule;
}

/** The same for all steps of a side, the pattern step among them. */
export function ruleFor({ step, partner }: Pattern, of: Study, side: Side | null): Step {
  const bySide = of.yardstick === "version" || of.walk.kind === "limp";
  return bySide && side !== step.weightOn ? (partner ?? step) : step;
}

/** Whose step a side is held against, as a person reads it: "the walk's own left step". */
export function patternWords(study: Study, pattern: Pattern, side: Side | null): string {
  const { yardstick } = study;
  const step = sided(ruleFor(pattern, study, side).weightOn, "step");
  return yardstick === "this-walk"
    ? `the walk's own ${step}`
    : `the ${step} of the walk it goes by`;
}

/** The named poses of a step in the order that it has them; on one frame as the strip has them. */
export function posesOf({ panels, weightOn }: Step): readonly StepPose[] {
  const named = gathered(panels, ({ pose, weightOn: on }) =>
    isStepPose(pose) && (on === null || on === weightOn) ? [pose] : [],
  );
  return [...new Set(named)];
}
