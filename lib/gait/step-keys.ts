import type { LegLength } from "../body";
import { placeOf } from "./ground-mark";
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

/** By what the readings of a study's steps are known. */
export interface StepKeys {
  /**
   * A step counts with the step that follows it, since a foot's next stance may tell how far it goes; with
   * the places of their panels where those were solved, and so hang on others, and with what tells how exactly;
   * and with the pattern.
   */
  ofStep(step: Step): readonly unknown[];
  /** What else is handed to a work: a step as above, anything else by itself. */
  ofOther(one: unknown): readonly unknown[];
}

export function stepKeys(study: Study): StepKeys {
  const pattern = patternKey(study);
  const known = new Map<unknown, readonly unknown[]>(
    study.steps.map((step) => [step, inWalk(study, step)]),
  );
  return {
    // A step of another walk is not known here, so nothing is remembered of it for the next study.
    ofStep: (step) => [...(known.get(step) ?? [step, study]), ...pattern],
    ofOther: (one) => known.get(one) ?? [one],
  };
}

function inWalk({ walk, steps }: Study, step: Step): readonly unknown[] {
  const following = steps[steps.indexOf(step) + 1] ?? null;
  if (walk.ground !== "solved") return [step, following];
  const both = following === null ? [step] : [step, following];
  const panels = both.flatMap((one) => [...one.panels, ...(one.next === null ? [] : [one.next])]);
  return [step, following, spreadKey(walk), ...panels.map((panel) => placeOf(panel, walk))];
}

function patternKey({ pattern, walk }: Study): readonly unknown[] {
  if (pattern === null) return [];
  if (pattern.kind === "cannot-tell") return [pattern.needs];
  const { study, step, partner } = pattern;
  const steps = partner === null ? [step] : [step, partner];
  const own = steps.flatMap((one) => inWalk(study, one));
  return study.walk === walk ? own : [...own, ...termsOf(study.walk, study.leg)];
}
