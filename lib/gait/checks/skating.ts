import { limbJoint, SIDES } from "../../body";
import { gathered } from "../../gathered";
import { rootSumSquare } from "../../geometry";
import { clearlyBeyond } from "../beyond";
import type { Finding, Reading, Remark, Spot } from "../finding";
import { SKATES_BEYOND, SKATES_SOURCE } from "../methods/tempo";
import { ONE_CONTACT_WITHIN } from "../readings/drawn-step";
import { type GroundPassed, groundPassed } from "../readings/ground-passed";
import type { Study } from "../study";
import type { WalkPanel, Yardstick } from "../walk";
import { cannotTell, sound } from "./answers";

/**
 * Does the ground go by as the steps are drawn? It does so by the advance, or by the panels' places in a
 * walk that travels. The feet skate where every step disagrees the same way by half the limit, and all together by more than it: one foot
 * that slips is no matter of the advance.
 *
 * Shapes:  one answer for the walk; none without a whole step
 * Units:   a share of the steps as drawn
 * Errors:  none; without the heels and the rear ball at a contact it answers "cannot-tell"
 * Source:  beside the limit, in the method
 */
export function skating(study: Study): readonly Finding[] {
  const asked = groundPassed(study);
  if (asked.length === 0) return [];
  const told = gathered(asked, ({ passed }) => (passed === null ? [] : [passed]));
  const panels = [...new Set(gathered(asked, ({ step, next }) => [step.contact, next]))];
  const about = { check: "tempo", side: null, panels } as const;
  if (told.length < asked.length) return [cannotTell(about, NEEDS)];
  const off = offBy(told);
  if (!doesSkate(told, off)) return [sound(about, off)];
  return [remarkOn(study.yardstick, { told, off, panels: panels.slice(0, 2) })];
}

const NEEDS = "both heels and the rear foot's ball marked in the side view of every contact";

/** By how much the ground goes farther than the steps are drawn, as a share of them; below 0 less far. */
function offBy(told: readonly GroundPassed[]): Reading {
  const drawn = told.reduce((sum, one) => sum + one.drawn, 0);
  const ground = told.reduce((sum, one) => sum + one.ground, 0);
  const marks = rootSumSquare(...told.map(({ plusMinus }) => plusMinus)) / drawn;
  // What a contact draws otherwise errs alike in all steps, so it does not shrink with their number.
  const plusMinus = rootSumSquare(marks, ONE_CONTACT_WITHIN);
  return { value: ground / drawn - 1, plusMinus, unit: "share" };
}

function doesSkate(told: readonly GroundPassed[], { value, plusMinus }: Reading): boolean {
  if (!clearlyBeyond(Math.abs(value), plusMinus, SKATES_BEYOND)) return false;
  const way = Math.sign(value);
  return told.every(({ ground, drawn }) => way * (ground / drawn - 1) > SKATES_BEYOND / 2);
}

interface Skates {
  readonly told: readonly GroundPassed[];
  readonly off: Reading;
  readonly panels: readonly WalkPanel[];
}

function remarkOn(yardstick: Yardstick, { told, off, panels }: Skates): Remark {
  const joints = SIDES.map((side) => limbJoint(side, "ankle"));
  const size = Math.abs(off.value);
  const mean = (of: (one: GroundPassed) => number) =>
    (told.reduce((sum, one) => sum + of(one), 0) / told.length).toFixed(2);
  const share = (value: number) => (100 * value).toFixed(1);
  const farther = off.value > 0;
  return {
    kind: "remark",
    check: "tempo",
    level: "shows",
    yardstick,
    side: null,
    panels: panels.map(({ id }) => id),
    frames: panels.map(({ frame }) => frame),
    spots: panels.map(({ id }): Spot => ({ panel: id, view: "side", joints })),
    measured: off,
    expected: { value: farther ? SKATES_BEYOND : -SKATES_BEYOND, plusMinus: 0, unit: "share" },
    title: "The feet skate",
    why: `The ground goes by at ${mean((one) => one.ground)} of a leg a step, and the steps are drawn ${mean((one) => one.drawn)} of a leg long: ${share(size)} ± ${share(off.plusMinus)} % ${farther ? "farther" : "less far"}; up to ${share(SKATES_BEYOND)} % passes. The feet will be seen to skate ${farther ? "forward" : "backward"} over the ground.`,
    source: SKATES_SOURCE,
    beyond: (size - SKATES_BEYOND) / SKATES_BEYOND,
  };
}
