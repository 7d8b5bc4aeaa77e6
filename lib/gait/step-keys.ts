import type { LegLength } from "../body";
import { gathered } from "../gathered";
import { placeOf } from "./ground-mark";
import { asBefore } from "./memory";
import { spreadKey } from "./places/spread-key";
import type { Step } from "./step";
import type { Study } from "./study";
import type { Walk } from "./walk";

/** What is the same for the whole walk and may turn up in any reading of it. */
export function termsOf({ build, panels, ...walk }: Walk, leg: LegLength): readonly unknown[] {
  const { kind, framesPerSecond, exposure, travel, ground, advance, load } = walk;
  return [
    ...[kind, framesPerSecond, exposure, travel, ground, advance, load],
    ...[build.headsTall, build.legShare, build.statureMetres],
    ...(leg.kind === "value" ? [leg.value, leg.plusMinus, leg.from] : [leg.needs]),
    panels.find(({ pose }) => pose === "stand")?.marks.side, // unmarked ankles and balls follow from it
  ];
}

/** By what the readings of a study's steps are known: lists that are one object for as long as they are the same. */
export interface StepKeys {
  /**
   * A step counts with the places of its panels where those were solved, and so hang on others, and with what
   * tells how exactly; and with the pattern.
   */
  ofStep(step: Step): readonly unknown[];
  /** The same, and the step that follows it: a foot's next stance may tell how far it goes. */
  withNext(step: Step): readonly unknown[];
  /** What else is handed to a work: a step as `withNext`, anything else by itself. */
  ofOther(one: unknown): unknown;
}

export function stepKeys(study: Study): StepKeys {
  const pattern = patternKey(study);
  const { steps, walk } = study;
  const own = new Map(
    steps.map((step) => [step, asBefore(step, [...inWalk(walk, step), ...pattern])]),
  );
  // A step of another walk is not known here, so nothing is remembered of it for the next study.
  const ofStep = (step: Step) => own.get(step) ?? asBefore(step, [step, study]);
  const pairs = new Map<unknown, readonly unknown[]>(
    steps.map((step, at) => {
      const [key, next] = [ofStep(step), steps[at + 1]];
      return [step, next === undefined ? key : asBefore(key, [key, ofStep(next)])];
    }),
  );
  const withNext = (step: Step) => pairs.get(step) ?? ofStep(step);
  return { ofStep, withNext, ofOther: (one) => pairs.get(one) ?? one };
}

/** By their identity steps stand for their panels, marks and frames. */
function inWalk(walk: Walk, step: Step): readonly unknown[] {
  if (walk.ground !== "solved") return [step];
  const panels = step.next === null ? step.panels : [...step.panels, step.next];
  return [step, spreadKey(walk), ...panels.map((panel) => placeOf(panel, walk))];
}

function patternKey({ pattern, walk }: Study): readonly unknown[] {
  if (pattern === null) return [];
  if (pattern.kind === "cannot-tell") return [pattern.needs];
  const { study, step, partner } = pattern;
  const both = gathered(partner === null ? [step] : [step, partner], (one) => {
    const following = study.steps[study.steps.indexOf(one) + 1];
    return following === undefined ? [one, null] : [one, following];
  });
  const own = gathered(both, (one) => (one === null ? [null] : inWalk(study.walk, one)));
  return study.walk === walk ? own : [...own, ...termsOf(study.walk, study.leg)];
}
