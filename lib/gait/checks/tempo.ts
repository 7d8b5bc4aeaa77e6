import { limbJoint, SIDES } from "../../body";
import { gathered } from "../../gathered";
import { clearlyBeyond, greatestOf } from "../beyond";
import { byPattern } from "../by-pattern";
import type { Finding, Reading, Remark, Spot } from "../finding";
import { footPoints, isWholeFoot, lowest } from "../foot";
import { OFF_THE_GROUND } from "../foot-state";
import {
  FLIGHT_SOURCE,
  RUNS_FROM,
  RUNS_SOURCE,
  STEP_LENGTH,
  STEP_LENGTH_SOURCE,
} from "../methods/tempo";
import { isQuiet } from "../quiet";
import { stepLength } from "../readings/between-feet";
import { stepFroude } from "../readings/step-speed";
import type { Step } from "../step";
import type { Study } from "../study";
import { LENGTH_TRAITS } from "../traits/step-traits";
import type { WalkPanel } from "../walk";
import { capital, percent } from "../words";
import { cannotTell, NEEDS_A_STEP, sound } from "./answers";
import { skating } from "./skating";
import { whoseStep } from "./step-words";

/**
 * Are the steps as long and as fast as a walk's? A step may be too short or too long, run by its Froude
 * number, or leave the ground; and the ground may go by otherwise than the feet are drawn, so that the
 * walker skates.
 *
 * Shapes:  one answer a step, a remark the one farthest beyond its limit, and beside it what could not be
 *          told; and one for the ground that goes by
 * Units:   leg lengths, shares, a pure number
 * Errors:  none; a step whose feet are not marked answers "cannot-tell"; without a stature there is no Froude
 *          number, and a step is not judged by it
 * Source:  beside each limit, in its method
 */
export function tempo(study: Study): readonly Finding[] {
  const { walk, steps } = study;
  if (isQuiet(walk.kind, "tempo")) return [];
  if (study.pattern !== null) {
    return [...byPattern(study, study.pattern, "tempo", LENGTH_TRAITS), ...skating(study)];
  }
  if (steps.length === 0) {
    return [cannotTell({ check: "tempo", side: null, panels: [] }, NEEDS_A_STEP)];
  }
  return [...gathered(study.inStepsWithNext(judge), (told) => told), ...skating(study)];
}

function judge(study: Study, step: Step): Finding[] {
  const { contact, next, weightOn: side } = step;
  const panels = next === null ? [contact] : [contact, next];
  const about = { check: "tempo", side, panels } as const;
  const length = stepLength(study, step);
  const remarks = [
    length.kind === "value" && next !== null ? lengthRemark(study, { step, next }, length) : null,
    next === null ? null : froudeRemark(study, { step, next }),
    flightRemark(study, step),
  ].filter((remark) => remark !== null);
  const gravest = greatestOf(remarks, ({ beyond }) => beyond);
  const open = length.kind === "cannot-tell" ? [cannotTell(about, length.needs)] : [];
  if (gravest !== undefined) return [gravest, ...open];
  return length.kind === "cannot-tell" ? open : [sound(about, length)];
}

/** A step and the contact that ends it. */
interface Whole {
  readonly step: Step;
  readonly next: WalkPanel;
}

function lengthRemark(study: Study, whole: Whole, length: Reading): Remark | null {
  const { value, plusMinus } = length;
  const isLong = clearlyBeyond(value, plusMinus, STEP_LENGTH.to);
  const isShort = clearlyBeyond(-value, plusMinus, -STEP_LENGTH.from);
  if (!(isLong || isShort)) return null;
  const limit = isLong ? STEP_LENGTH.to : STEP_LENGTH.from;
  const { step, next } = whole;
  const { from, to } = STEP_LENGTH;
  return {
    ...overTheStep(study, whole),
    subject: "length",
    measured: { value, plusMinus, unit: "leg" },
    expected: { value: limit, plusMinus: 0, unit: "leg" },
    title: capital(`${whoseStep(step.weightOn)} is ${isLong ? "long" : "short"}`),
    why: `From frame ${step.contact.frame} to ${next.frame} the step is ${percent(length)} of a leg long; people walk with ${(100 * from).toFixed(0)} to ${(100 * to).toFixed(0)} %. It may read as ${isLong ? "a leap or a lunge" : "a shuffle"}.`,
    source: STEP_LENGTH_SOURCE,
    beyond: Math.abs(value - limit) / limit,
  };
}

function froudeRemark(study: Study, whole: Whole): Remark | null {
  const { step, next } = whole;
  const number = stepFroude(study, step);
  if (number.kind === "cannot-tell") return null;
  const { value, plusMinus } = number;
  if (!clearlyBeyond(value, plusMinus, RUNS_FROM)) return null;
  return {
    ...overTheStep(study, whole),
    measured: { value, plusMinus, unit: "number" },
    expected: { value: RUNS_FROM, plusMinus: 0, unit: "number" },
    title: capital(`${whoseStep(step.weightOn)} goes as fast as a run`),
    why: `From frame ${step.contact.frame} to ${next.frame} the walker goes at a Froude number of ${value.toFixed(2)} ± ${plusMinus.toFixed(2)}, for a leg of this size; from ${RUNS_FROM} on people run. It may read as a run with its feet kept down.`,
    source: RUNS_SOURCE,
    beyond: (value - RUNS_FROM) / RUNS_FROM,
  };
}

/** What remarks on a whole step share: both of its contacts, and the feet in them. */
function overTheStep({ yardstick }: Study, { step, next }: Whole) {
  const joints = SIDES.map((side) => limbJoint(side, "ankle"));
  const panels = [step.contact, next];
  return {
    kind: "remark",
    check: "tempo",
    level: "may-show",
    yardstick,
    side: step.weightOn,
    panels: panels.map(({ id }) => id),
    frames: panels.map(({ frame }) => frame),
    spots: panels.map(({ id }): Spot => ({ panel: id, view: "side", joints })),
  } as const;
}

/**
 * A pose after the passing with both feet up. Earlier poses that have no foot on the ground are a foot that
 * floats: a run flies between its push and its landing.
 */
function flightRemark(study: Study, step: Step): Remark | null {
  const { passing, panels, weightOn } = step;
  const after = passing === null ? [] : panels.slice(panels.indexOf(passing) + 1);
  const flying = after.map((panel) => ({ panel, low: lowOf(study, panel) }));
  const found = flying.find(({ low }) => low !== null);
  if (found === undefined || found.low === null) return null;
  const { panel, low } = found;
  const joints = SIDES.map((side) => limbJoint(side, "toe"));
  return {
    kind: "remark",
    check: "tempo",
    level: "may-show",
    yardstick: study.yardstick,
    subject: "flight",
    side: weightOn,
    panels: [panel.id],
    frames: [panel.frame],
    spots: [{ panel: panel.id, view: "side", joints }],
    measured: low,
    expected: { value: OFF_THE_GROUND, plusMinus: 0, unit: "leg" },
    title: "No foot is on the ground",
    why: `At frame ${panel.frame} the lower of the two feet is ${percent(low)} of a leg above the ground; up to ${percent({ value: OFF_THE_GROUND, plusMinus: 0 })} passes as standing. With neither foot down it may read as a run.`,
    source: FLIGHT_SOURCE,
    beyond: (low.value - OFF_THE_GROUND) / OFF_THE_GROUND,
  };
}

/** How high the lower foot is, where both are clearly off the ground; else null. */
function lowOf({ leg }: Study, panel: WalkPanel): Reading | null {
  const lows = SIDES.map((side) => {
    const points = footPoints(panel, side, leg);
    const low = lowest(points);
    return low !== null && isWholeFoot(points) ? low : null;
  });
  const up = lows.filter(
    (low) => low !== null && clearlyBeyond(low.y, low.plusMinus, OFF_THE_GROUND),
  );
  if (up.length < SIDES.length) return null;
  const [low] = up.toSorted((a, b) => (a?.y ?? 0) - (b?.y ?? 0));
  return low == null ? null : { value: low.y, plusMinus: low.plusMinus, unit: "leg" };
}
