import { limbJoint, otherSide, type Side } from "../../body";
import { distance, rootSumSquare } from "../../geometry";
import { type Answer, answerOf } from "../answer";
import type { Study } from "../study";
import type { WalkPanel } from "../walk";

/**
 * How far a step read off one contact may differ from the step itself, as a share of it: the heel still
 * rolls ahead and the rear foot stands on its ball.
 * Source: the poses of six captured walks, 23 steps: 0.961 to 1.026 of the step length between flat feet,
 * 0.98 on average (ankle to ankle only 0.89 to 0.94).
 */
export const ONE_CONTACT_WITHIN = 0.03;

/**
 * The step as one contact draws it: from where the rear foot's heel was before it rose to the heel that
 * lands. It asks nothing of the ground, so it tells whether the ground goes by as the feet are drawn.
 *
 * Units:   leg lengths; ± of the marks and of what a contact may differ
 * Errors:  none; without the marks it answers "cannot-tell"
 * Source:  see `ONE_CONTACT_WITHIN`
 */
export function drawnStep(study: Study, contact: WalkPanel, lands: Side): Answer {
  const rear = otherSide(lands);
  if (study.leg.kind === "cannot-tell") return study.leg;
  const needs = `the ${lands} heel and the ${rear} heel and ball marked in the side view of the contact at frame ${contact.frame}`;
  const drawn = drawnBetween(study, contact, lands);
  if (drawn === null) return { kind: "cannot-tell", needs };
  const { length, plusMinus } = drawn;
  return answerOf(length, rootSumSquare(plusMinus, ONE_CONTACT_WITHIN * length), "leg", needs);
}

/** The same with the ± of the marks alone, or null where one is missing. Leg lengths. */
export function drawnBetween(
  study: Study,
  contact: WalkPanel,
  lands: Side,
): { readonly length: number; readonly plusMinus: number } | null {
  const rear = otherSide(lands);
  const front = study.seen(contact, limbJoint(lands, "heel"));
  const heel = study.seen(contact, limbJoint(rear, "heel"));
  const ball = study.seen(contact, limbJoint(rear, "ball"));
  if (front === null || heel === null || ball === null) return null;
  const marks = [front, ball, ball, heel].map((mark) => mark.plusMinus);
  return {
    length: front.x - (ball.x - distance(heel, ball)),
    plusMinus: rootSumSquare(...marks),
  };
}
