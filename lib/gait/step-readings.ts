import { frontToGround, limbJoint, markOf, otherSide, type Side } from "../body";
import { rootSumSquare } from "../geometry";
import type { Frame, StepPose } from "../motion";
import { type Answer, answerOf, type NoReading } from "./answer";
import { stepFrames } from "./expected-frames";
import type { Step } from "./step";
import type { Study } from "./study";
import type { WalkPanel } from "./walk";

/** What a step reads. Frames of poses that were not drawn are null. */
export interface StepReading {
  readonly weightOn: Side | null;
  readonly frames: Readonly<Record<StepPose | "next", Frame | null>>;
  /** Frames from contact to contact, null without the next. */
  readonly length: Answer;
  /** Foot to foot, across the walk, from the front view. */
  readonly width: Answer;
  readonly duration: number | null;
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
    length: stepLength(study, step),
    width: stepWidth(study, step),
    duration: stepFrames(step),
    hipHeights: {
      contact: hipAt(study, step, "contact"),
      down: hipAt(study, step, "down"),
      passing: hipAt(study, step, "passing"),
      up: hipAt(study, step, "up"),
    },
  };
}

/**
 * Step length: from where one heel lands to where the other does, along the ground; ankle to ankle
 * where no heel is marked. Units: leg lengths.
 */
function stepLength(study: Study, step: Step): Answer {
  const { weightOn, contact, next } = step;
  if (study.leg.kind === "cannot-tell") return study.leg;
  if (weightOn === null || next === null) return NO_NEXT;
  for (const joint of ["heel", "ankle"] as const) {
    const from = study.ground(contact, limbJoint(weightOn, joint));
    const to = study.ground(next, limbJoint(otherSide(weightOn), joint));
    if (from === null || to === null) continue;
    return answerOf(to.x - from.x, rootSumSquare(from.plusMinus, to.plusMinus), "leg", HEELS);
  }
  return { kind: "cannot-tell", needs: HEELS };
}

/** Step width: between the ankles as they land, or between what of the feet is marked. */
function stepWidth(study: Study, step: Step): Answer {
  const { weightOn, contact, next } = step;
  if (study.leg.kind === "cannot-tell") return study.leg;
  if (weightOn === null || next === null) return NO_NEXT;
  const legUnits = study.leg.value;
  for (const joint of ["ankle", "ball", "heel", "toe"] as const) {
    const from = across(contact, limbJoint(weightOn, joint), legUnits);
    const to = across(next, limbJoint(otherSide(weightOn), joint), legUnits);
    if (from === null || to === null) continue;
    return answerOf(
      Math.abs(to.z - from.z),
      rootSumSquare(from.plusMinus, to.plusMinus),
      "leg",
      FEET_IN_FRONT,
    );
  }
  return { kind: "cannot-tell", needs: FEET_IN_FRONT };
}

const NO_NEXT: NoReading = {
  kind: "cannot-tell",
  needs: "the contact that ends the step, and whose weight it carries",
};
const HEELS = "the landing heel marked at both contacts, in the side view";
const FEET_IN_FRONT = "the landing foot marked at both contacts, in the front view";

function across(panel: WalkPanel, joint: Parameters<typeof markOf>[1], legUnits: number) {
  const mark = markOf(panel.marks.front, joint);
  if (mark === null) return null;
  return { z: frontToGround(mark, legUnits).z, plusMinus: mark.precision / legUnits };
}

function hipAt(study: Study, step: Step, pose: StepPose): Answer {
  const panel = step[pose];
  return panel === null ? { kind: "cannot-tell", needs: `the ${pose} drawn` } : study.hipOf(panel);
}
