import { type JointName, type LimbJoint, limbJoint, otherSide } from "../../body";
import { rootSumSquare } from "../../geometry";
import { type Answer, answerOf, type NoReading } from "../answer";
import type { Reading } from "../finding";
import { frontMark } from "../front-mark";
import type { Step } from "../step";
import type { Study } from "../study";
import type { WalkPanel } from "../walk";
import { groundBetween, type SeenOn } from "./ground-between";

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

/**
 * Step length: along the ground from where one foot stands to where the other does, in the side view.
 *
 * Units:   leg lengths; ± that of the two marks, and of the panels' places where they are solved
 * Errors:  none; without the next contact, or a foot of either stance, it answers "cannot-tell"
 * Source:  heel to heel along the walk (Murray, Drought & Kory 1964, J Bone Joint Surg Am 46:335)
 */
export function stepLength(study: Study, step: Step): Answer {
  return study.onceWithNext(step, readLength);
}

function readLength(study: Study, step: Step): Answer {
  const at = (panel: WalkPanel, joint: JointName): SeenOn | null => {
    const mark = study.seen(panel, joint);
    return mark === null ? null : { panel, x: mark.x, plusMinus: mark.plusMinus };
  };
  const needs = "the landing heel marked at both contacts, in the side view";
  const between = (from: SeenOn, to: SeenOn) => groundBetween(study, from, to);
  return betweenFeet(study, step, ALONG, { at, needs, between });
}

/**
 * Step width: between the feet as they stand, across the walk, in the front view. Below 0 the feet cross:
 * each stands on the other's side.
 *
 * Units:   leg lengths; ± that of the two marks
 * Errors:  none; without the next contact, or a foot of either stance, it answers "cannot-tell"
 * Source:  the base of the walk, as measured by Donelan, Kram & Kuo (2001), Proc R Soc B 268:1985
 */
export function stepWidth(study: Study, step: Step): Answer {
  const at = (panel: WalkPanel, joint: JointName) => frontMark(panel, joint, study.leg);
  const needs = "the landing foot marked at both contacts, in the front view";
  const right = step.weightOn === "left" ? 1 : -1; // z runs to the walker's right
  return betweenFeet(study, step, ACROSS, {
    at,
    needs,
    between: (from, to) => ({
      value: right * (to.z - from.z),
      plusMinus: rootSumSquare(from.plusMinus, to.plusMinus),
    }),
  });
}

interface Ruler<Spot> {
  readonly at: (panel: WalkPanel, joint: JointName) => Spot | null;
  readonly between: (from: Spot, to: Spot) => Omit<Reading, "unit"> | null;
  readonly needs: string;
}

/** Measures between a step's foot and the next by the first footing that both have marked. */
function betweenFeet<Spot>(
  { leg, steps }: Study,
  step: Step,
  footings: readonly Footing[],
  { at, between, needs }: Ruler<Spot>,
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
    const apart = from === null || to === null ? null : between(from, to);
    if (apart !== null) return answerOf(apart.value, apart.plusMinus, "leg", needs);
  }
  return { kind: "cannot-tell", needs };
}

/** What a step lacks that nothing ends. */
export const NO_NEXT: NoReading = {
  kind: "cannot-tell",
  needs: "the contact that ends the step, and whose weight it carries",
};
