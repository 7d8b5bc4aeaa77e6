import { type JointName, type LimbJoint, limbJoint, otherSide, type Side } from "../body";
import { rootSumSquare } from "../geometry";
import type { Frame, StepPose } from "../motion";
import { type Answer, answerOf, type NoReading } from "./answer";
import { stepFrames } from "./expected-frames";
import { frontMark } from "./front-mark";
import type { Step } from "./step";
import type { Study } from "./study";
import type { WalkPanel } from "./walk";

/** What a step reads. Frames of poses that were not drawn are null. */
export interface StepReading {
  readonly weightOn: Side | null;
  readonly frames: Readonly<Record<StepPose | "next", Frame | null>>;
  /** Frames from contact to contact, null without the next. */
  readonly duration: number | null;
  /** Foot to foot along the walk, from the side view. */
  readonly length: Answer;
  /** Foot to foot across the walk, from the front view. */
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

/** A pose of both feet's stance, and the mark that is held against its like. */
interface Footing {
  readonly pose: "passing" | "contact";
  readonly joint: LimbJoint;
}

/** At passing a foot is flat and has stopped rolling; at contact it is the heel that stays. */
const ALONG: readonly Footing[] = [
  { pose: "passing", joint: "ankle" },
  { pose: "passing", joint: "heel" },
  { pose: "contact", joint: "heel" },
  { pose: "contact", joint: "ankle" },
];
const ACROSS: readonly Footing[] = (["passing", "contact"] as const).flatMap((pose) =>
  (["ankle", "ball", "heel", "toe"] as const).map((joint) => ({ pose, joint })),
);

/** Step length: along the ground from where one foot stands to where the other does. Leg lengths. */
function stepLength(study: Study, step: Step): Answer {
  const at = (panel: WalkPanel, joint: JointName) => study.ground(panel, joint);
  const needs = "the landing heel marked at both contacts, in the side view";
  return betweenFeet(study, step, ALONG, { at, needs, along: (from, to) => to.x - from.x });
}

/** Step width: between the feet as they stand, across the walk. Leg lengths. */
function stepWidth(study: Study, step: Step): Answer {
  const at = (panel: WalkPanel, joint: JointName) => frontMark(panel, joint, study.leg);
  const needs = "the landing foot marked at both contacts, in the front view";
  return betweenFeet(study, step, ACROSS, {
    at,
    needs,
    along: (from, to) => Math.abs(to.z - from.z),
  });
}

interface Ruler<Spot extends { readonly plusMinus: number }> {
  readonly at: (panel: WalkPanel, joint: JointName) => Spot | null;
  readonly along: (from: Spot, to: Spot) => number;
  readonly needs: string;
}

/** Measures between a step's foot and the next by the first footing that both have marked. */
function betweenFeet<Spot extends { readonly plusMinus: number }>(
  { leg, steps }: Study,
  step: Step,
  footings: readonly Footing[],
  { at, along, needs }: Ruler<Spot>,
): Answer {
  const { weightOn, next } = step;
  if (leg.kind === "cannot-tell") return leg;
  if (weightOn === null || next === null) return NO_NEXT;
  const following = steps.find(({ contact }) => contact === next);
  for (const { pose, joint } of footings) {
    const here = step[pose];
    const there = pose === "contact" ? next : (following?.passing ?? null);
    const from = here === null ? null : at(here, limbJoint(weightOn, joint));
    const to = there === null ? null : at(there, limbJoint(otherSide(weightOn), joint));
    if (from === null || to === null) continue;
    return answerOf(along(from, to), rootSumSquare(from.plusMinus, to.plusMinus), "leg", needs);
  }
  return { kind: "cannot-tell", needs };
}

const NO_NEXT: NoReading = {
  kind: "cannot-tell",
  needs: "the contact that ends the step, and whose weight it carries",
};

function hipAt(study: Study, step: Step, pose: StepPose): Answer {
  const panel = step[pose];
  return panel === null ? { kind: "cannot-tell", needs: `the ${pose} drawn` } : study.hipOf(panel);
}
