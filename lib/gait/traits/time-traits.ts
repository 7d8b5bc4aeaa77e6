import type { StepPose } from "../../motion";
import type { NoReading } from "../answer";
import type { Trait, TraitReading } from "../by-pattern";
import { nextContact, whoseStep } from "../checks/step-words";
import { stepFrames } from "../expected-frames";
import { NEIGHBOURS } from "../methods/neighbouring-steps";
import type { Step } from "../step";
import type { Study } from "../study";

/** A whole frame stands for a moment anywhere within its exposure: half of it either way. */
const WITHIN = 1 / 2;

const POSES: readonly Trait[] = (["down", "passing", "up"] as const).map((pose) => ({
  name: `the time of the ${pose}`,
  what: `the ${pose} comes after this much of the step`,
  sees: "the move is seen to hurry or to hang there",
  near: NEIGHBOURS[pose],
  by: "difference",
  pose,
  read: (study, step) => shareOf(study, step, pose),
}));

const FRAMES: Trait = {
  name: "its length in time",
  what: "from contact to contact it takes",
  sees: "the walk is seen to lose its beat",
  near: NEIGHBOURS.frames,
  by: "index",
  read: lasting,
};

/** When the poses come that the pattern step has, and how long the step takes. */
export const TIME_TRAITS: readonly Trait[] = [FRAMES, ...POSES];

function lasting({ walk }: Study, step: Step): TraitReading | NoReading {
  const frames = stepFrames(step);
  const { contact, next } = step;
  if (frames === null || next === null) return noNext(step);
  const reading = { value: frames, plusMinus: WITHIN * walk.exposure, unit: "frames" } as const;
  return { kind: "read", reading, panels: [contact, next], spots: [] };
}

function shareOf({ walk }: Study, step: Step, pose: StepPose): TraitReading | NoReading {
  const frames = stepFrames(step);
  const panel = step[pose];
  if (frames === null) return noNext(step);
  if (panel === null) {
    return { kind: "cannot-tell", needs: `the ${pose} of ${whoseStep(step.weightOn)} drawn` };
  }
  const value = (panel.frame - step.contact.frame) / frames;
  const plusMinus = (WITHIN * walk.exposure) / frames;
  const reading = { value, plusMinus, unit: "share" } as const;
  return { kind: "read", reading, panels: [step.contact, panel], spots: [] };
}

function noNext({ weightOn, contact }: Step): NoReading {
  return { kind: "cannot-tell", needs: nextContact(weightOn, contact) };
}
