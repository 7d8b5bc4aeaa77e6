import { limbJoint, otherSide, type Side } from "../../body";
import { gathered } from "../../gathered";
import { rootSumSquare } from "../../geometry";
import { clearlyBeyond } from "../beyond";
import { OFF_THE_GROUND } from "../foot-state";
import type { GroundMark } from "../seen-mark";
import type { Step } from "../step";
import type { Study } from "../study";
import type { WalkPanel } from "../walk";
import { drawnBetween } from "./drawn-step";
import { groundBetween, type SeenOn } from "./ground-between";

/** A step as the ground has it and as it is drawn. Leg lengths. */
export interface GroundPassed {
  /** Heel to heel along the ground, by where the panels stand. */
  readonly ground: number;
  /** Heel to heel as the contact that ends the step draws it. */
  readonly drawn: number;
  /** Of both: from the marks, and from the panels' places where they are solved. */
  readonly plusMinus: number;
}

/** A step, both of its contacts, and what passed; null where marks are missing. */
export interface StepPassed {
  readonly step: Step;
  readonly next: WalkPanel;
  readonly passed: GroundPassed | null;
}

/**
 * The steps as the ground has them, by the advance or by the panels' places, and as their ends draw them.
 *
 * Shapes:  whole steps in their order; none of those whose rear foot has left before the other lands: what
 *          flies lands farther than it is drawn to step
 * Units:   leg lengths
 * Errors:  none
 */
export function groundPassed(study: Study): readonly StepPassed[] {
  return gathered(study.inSteps(passedIn), (told) => told);
}

function passedIn(study: Study, step: Step): readonly StepPassed[] {
  const { contact, next, weightOn } = step;
  if (next === null || weightOn === null) return [];
  const lands = otherSide(weightOn);
  if (hasFlown(study, next, weightOn)) return [];
  const from = study.seen(contact, limbJoint(weightOn, "heel"));
  const to = study.seen(next, limbJoint(lands, "heel"));
  const ground =
    from === null || to === null
      ? null
      : groundBetween(study, seenOn(contact, from), seenOn(next, to));
  const drawn = drawnBetween(study, next, lands);
  if (ground === null || drawn === null || !(drawn.length > 0)) {
    return [{ step, next, passed: null }];
  }
  const plusMinus = rootSumSquare(ground.plusMinus, drawn.plusMinus);
  return [{ step, next, passed: { ground: ground.value, drawn: drawn.length, plusMinus } }];
}

function seenOn(panel: WalkPanel, { x, plusMinus }: GroundMark): SeenOn {
  return { panel, x, plusMinus };
}

/** Whether the rear foot is off the ground already where the other lands, by its ball. */
function hasFlown(study: Study, contact: WalkPanel, rear: Side): boolean {
  const ball = study.seen(contact, limbJoint(rear, "ball"));
  return ball !== null && clearlyBeyond(ball.y, ball.plusMinus, OFF_THE_GROUND);
}
