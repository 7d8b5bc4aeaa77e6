import type { Side } from "../body";
import { type Frame, STEP_POSES, type StepPose } from "../motion";
import { type Answer, answerOf } from "./answer";
import { cadence } from "./cadence";
import { compassRise } from "./compass-rise";
import { stepFrames } from "./expected-frames";
import { NO_NEXT, stepLength, stepWidth } from "./readings/between-feet";
import { doubleSupport, flightShare } from "./readings/double-support";
import { hipRange, hipShift } from "./readings/hip-readings";
import { legMetres, stepFroude, stepMetresPerSecond, stepSpeed } from "./readings/step-speed";
import type { Step } from "./step";
import type { Study } from "./study";
import { walkRatio } from "./walk-ratio";

/** What a step reads. Frames of poses that were not drawn are null. */
export interface StepReading {
  readonly weightOn: Side | null;
  readonly frames: Readonly<Record<StepPose | "next", Frame | null>>;
  /** Frames from contact to contact, null without the next. */
  readonly duration: number | null;
  /** The same in seconds. */
  readonly seconds: number | null;
  /** When each pose comes, as a share of the step; null where it was not drawn or nothing ends the step. */
  readonly shares: Readonly<Record<StepPose, number | null>>;
  /** Foot to foot along the walk, from the side view. */
  readonly length: Answer;
  /** Foot to foot across the walk, from the front view; below 0 the feet cross. */
  readonly width: Answer;
  readonly speed: Answer;
  readonly metresPerSecond: Answer;
  readonly froude: Answer;
  /** Steps a minute, if all were like this one. */
  readonly cadence: Answer;
  /** Metres per step a minute, as `number`. */
  readonly walkRatio: Answer;
  readonly doubleSupport: Answer;
  readonly flight: Answer;
  readonly hipHeights: Readonly<Record<StepPose, Answer>>;
  readonly hipRange: Answer;
  /** How far the hips would rise over stiff legs, for comparison. */
  readonly compassRise: Answer;
  /** The hips at passing, toward the foot that carries. */
  readonly hipShift: Answer;
}

/** The readings of one step: when, how far, how fast, how wide and how high. Units: beside each answer. */
export function stepReading(study: Study, step: Step): StepReading {
  const { contact, next, panels } = step;
  const duration = stepFrames(step);
  const length = stepLength(study, step);
  return {
    weightOn: step.weightOn,
    frames: {
      contact: contact.frame,
      down: step.down?.frame ?? null,
      passing: step.passing?.frame ?? null,
      up: step.up?.frame ?? null,
      next: next?.frame ?? null,
    },
    duration,
    seconds: duration === null ? null : duration / study.walk.framesPerSecond,
    shares: sharesOf(step, duration),
    length,
    width: stepWidth(study, step),
    speed: stepSpeed(study, step),
    metresPerSecond: stepMetresPerSecond(study, step),
    froude: stepFroude(study, step),
    cadence: cadenceOf(study, duration),
    walkRatio: ratioOf(study, length, duration),
    doubleSupport: doubleSupport(study, step),
    flight: flightShare(study, step),
    hipHeights: {
      contact: hipAt(study, step, "contact"),
      down: hipAt(study, step, "down"),
      passing: hipAt(study, step, "passing"),
      up: hipAt(study, step, "up"),
    },
    hipRange: hipRange(study, next === null ? panels : [...panels, next]),
    compassRise: riseOf(length),
    hipShift: hipShift(study, step),
  };
}

function hipAt(study: Study, step: Step, pose: StepPose): Answer {
  const panel = step[pose];
  return panel === null ? { kind: "cannot-tell", needs: `the ${pose} drawn` } : study.hipOf(panel);
}

function sharesOf(step: Step, duration: number | null): StepReading["shares"] {
  const share = (pose: StepPose) => {
    const panel = step[pose];
    if (panel === null || duration === null) return null;
    return (panel.frame - step.contact.frame) / duration;
  };
  const [contact, down, passing, up] = STEP_POSES.map(share);
  return {
    contact: contact ?? null,
    down: down ?? null,
    passing: passing ?? null,
    up: up ?? null,
  };
}

function cadenceOf({ walk }: Study, duration: number | null): Answer {
  if (duration === null) return NO_NEXT;
  return answerOf(cadence(duration, walk.framesPerSecond), 0, "steps/min", NO_NEXT.needs);
}

function ratioOf(study: Study, length: Answer, duration: number | null): Answer {
  const leg = legMetres(study);
  if (leg === null)
    return { kind: "cannot-tell", needs: "the character's stature in metres, from the brief" };
  if (length.kind === "cannot-tell") return length;
  if (duration === null || !(length.value > 0)) return NO_NEXT;
  const stepsPerMinute = cadence(duration, study.walk.framesPerSecond);
  const ratio = walkRatio(length.value * leg, stepsPerMinute);
  const plusMinus = (length.plusMinus * leg) / stepsPerMinute;
  return answerOf(ratio, plusMinus, "m/(step/min)", NO_NEXT.needs);
}

/** In leg lengths, so the leg is 1; its slope by the step is S / (4 · √(1 − (S/2)²)). */
function riseOf(length: Answer): Answer {
  if (length.kind === "cannot-tell") return length;
  const { value, plusMinus } = length;
  const needs = "a step that two legs can span";
  if (!(value > 0 && value < 2)) return { kind: "cannot-tell", needs };
  const slope = value / (4 * Math.sqrt(1 - (value / 2) ** 2));
  return answerOf(compassRise(1, value), slope * plusMinus, "leg", needs);
}
