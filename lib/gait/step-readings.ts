import type { Side } from "../body";
import type { Frame, StepPose } from "../motion";
import type { Answer } from "./answer";
import { stepFrames } from "./expected-frames";
import { stepLength, stepWidth } from "./readings/between-feet";
import type { Step } from "./step";
import type { Study } from "./study";

/** What a step reads. Frames of poses that were not drawn are null. */
export interface StepReading {
  readonly weightOn: Side | null;
  readonly frames: Readonly<Record<StepPose | "next", Frame | null>>;
  /** Frames from contact to contact, null without the next. */
  readonly duration: number | null;
  /** Foot to foot along the walk, from the side view. */
  readonly length: Answer;
  /** Foot to foot across the walk, from the front view; below 0 the feet cross. */
  readonly width: Answer;
  readonly hipHeights: Readonly<Record<StepPose, Answer>>;
}

/** The readings of one step: when, how far, how wide and how high. Units: frames, leg lengths. */
export function stepReading(study: Study, step: Step): StepReading {
  return {
    weightOn: step.weightOn,
    frames: {
      contact: step.contact.frame,
      down: step.down?.frame ?? null,
      passing: step.passing?.frame ?? null,
      up: step.up?.frame ?? null,
      next: step.next?.frame ?? null,
    },
    duration: stepFrames(step),
    length: stepLength(study, step),
    width: stepWidth(study, step),
    hipHeights: {
      contact: hipAt(study, step, "contact"),
      down: hipAt(study, step, "down"),
      passing: hipAt(study, step, "passing"),
      up: hipAt(study, step, "up"),
    },
  };
}

function hipAt(study: Study, step: Step, pose: StepPose): Answer {
  const panel = step[pose];
  return panel === null ? { kind: "cannot-tell", needs: `the ${pose} drawn` } : study.hipOf(panel);
}
