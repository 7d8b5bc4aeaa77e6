import type { Side } from "../body";
import { gathered } from "../gathered";
import { rootSumSquare } from "../geometry";
import { STEP_POSES } from "../motion";
import { type Answer, answerOf, type NoReading } from "./answer";
import { stridesOf } from "./checks/strides";
import { stepFrames } from "./expected-frames";
import { harmonics } from "./harmonics";
import { type ArcReadings, strideArcs } from "./readings/arcs";
import { NO_NEXT, stepLength } from "./readings/between-feet";
import { stanceShare } from "./readings/double-support";
import { hipRange, hipSway } from "./readings/hip-readings";
import { loopGap } from "./readings/loop-gaps";
import { seamSpeed } from "./readings/seam-speed";
import { stepSeconds } from "./readings/step-speed";
import type { Step } from "./step";
import type { Study } from "./study";
import { symmetryAngle } from "./symmetry-angle";
import { symmetryIndex } from "./symmetry-index";

/** One quantity of the left step against the same of the right. */
export interface Symmetry {
  /** |L − R| over their mean. */
  readonly index: Answer;
  /** Zifchock's angle as a share of a right angle; above 0 where the right is more. */
  readonly angle: Answer;
}

/** What two steps together read. */
export interface StrideReading {
  /** The foot whose contact begins the stride. */
  readonly foot: Side | null;
  readonly frames: number | null;
  /** Both steps' lengths. */
  readonly length: Answer;
  readonly seconds: Answer;
  /** Share of the stride in which that foot is down; the rest is its swing. */
  readonly stance: Answer;
  readonly swing: Answer;
  readonly hipRange: Answer;
  /** The hips from side to side. */
  readonly hipSway: Answer;
  readonly symmetry: Readonly<Record<"time" | "length" | "hipHeight" | "hipRange", Symmetry>>;
  /** How much of the hips' rise and fall both steps share: 1 where they are alike. */
  readonly stepToStep: Answer;
  /** How the hips' speed, up, changes where the stride begins again, less how it does at its middle contact. */
  readonly seam: Answer;
  /** How far the worst joint of the last contact lies from the first's. */
  readonly loopGap: Answer;
  readonly arcs: ArcReadings;
}

/** The readings of each stride, two steps by two. Units: leg lengths, seconds, shares. */
export function strideReadings(study: Study): readonly StrideReading[] {
  return stridesOf(study.steps).map(({ first, second }) => strideReading(study, first, second));
}

function strideReading(study: Study, first: Step, second: Step): StrideReading {
  const panels = [
    ...first.panels,
    ...second.panels,
    ...(second.next === null ? [] : [second.next]),
  ];
  const lengths = [stepLength(study, first), stepLength(study, second)];
  const times = [stepSeconds(study, first), stepSeconds(study, second)];
  const ranges = [first, second].map((step) => hipRange(study, wholeStep(step)));
  const heights = [meanHeight(study, first), meanHeight(study, second)];
  const between = (answers: readonly Answer[]) => symmetryOf(first.weightOn, answers);
  const stance = stanceShare(study, first, second);
  const [one, two] = [stepFrames(first), stepFrames(second)];
  return {
    foot: first.weightOn,
    frames: one === null || two === null ? null : one + two,
    length: summed(lengths, "leg"),
    seconds: summed(times, "seconds"),
    stance,
    swing: stance.kind === "value" ? { ...stance, value: 1 - stance.value } : stance,
    hipRange: hipRange(study, panels),
    hipSway: hipSway(study, panels),
    symmetry: {
      time: between(times),
      length: between(lengths),
      hipHeight: between(heights),
      hipRange: between(ranges),
    },
    stepToStep: stepToStep(study, first, second),
    seam: seamSpeed(study, first, second),
    loopGap: loopGap(study, first, second),
    arcs: strideArcs(study, first.contact, second.next),
  };
}

function wholeStep({ panels, next }: Step) {
  return next === null ? panels : [...panels, next];
}

/** Both steps together. */
function summed(answers: readonly Answer[], unit: "leg" | "seconds"): Answer {
  const [one, two] = answers;
  if (one?.kind !== "value") return one ?? NO_NEXT;
  if (two?.kind !== "value") return two ?? NO_NEXT;
  const plusMinus = rootSumSquare(one.plusMinus, two.plusMinus);
  return answerOf(one.value + two.value, plusMinus, unit, NO_NEXT.needs);
}

/** Mean height of the hips in the four poses of a step; all must be there, or unlike poses are compared. */
function meanHeight(study: Study, step: Step): Answer {
  const heights = gathered(
    STEP_POSES.map((pose) => {
      const panel = step[pose];
      return panel === null ? null : study.hipOf(panel);
    }),
    (height) => (height?.kind === "value" ? [height] : []),
  );
  const needs = "the hips marked in all four poses of both steps";
  if (heights.length < STEP_POSES.length) return { kind: "cannot-tell", needs };
  const value = heights.reduce((sum, height) => sum + height.value, 0) / heights.length;
  const plusMinus = rootSumSquare(...heights.map((one) => one.plusMinus)) / heights.length;
  return answerOf(value, plusMinus, "leg", needs);
}

/** Left against right, whichever came first. Both must be above 0 for either figure to mean anything. */
function symmetryOf(firstSide: Side | null, [first, second]: readonly Answer[]): Symmetry {
  const [left, right] = firstSide === "right" ? [second, first] : [first, second];
  if (left?.kind !== "value" || right?.kind !== "value") {
    const missing: NoReading = {
      kind: "cannot-tell",
      needs: [left, right].find((one) => one?.kind === "cannot-tell")?.needs ?? NO_NEXT.needs,
    };
    return { index: missing, angle: missing };
  }
  const needs = "both steps to go forward";
  if (!(left.value > 0 && right.value > 0)) {
    const missing: NoReading = { kind: "cannot-tell", needs };
    return { index: missing, angle: missing };
  }
  const [l, r] = [left.value, right.value];
  // dSI/dL = 4R/(L + R)², dSA/dL = (2/π) R/(L² + R²), and the same the other way round.
  const cross = rootSumSquare(r * left.plusMinus, l * right.plusMinus);
  return {
    index: answerOf(symmetryIndex(l, r), (4 * cross) / (l + r) ** 2, "share", needs),
    angle: answerOf(
      symmetryAngle(l, r),
      (2 * cross) / (Math.PI * (l ** 2 + r ** 2)),
      "share",
      needs,
    ),
  };
}

const SAMPLES = 64; // of a stride; far more than the poses, so that none falls between
const MOST_HARMONICS = 4; // eight poses a stride tell no more

/**
 * Step-to-step share of the hips' height: even harmonics over all of them, by amplitude, over one stride. The
 * height runs straight from pose to pose and closes on itself.
 *
 * Units:   a share; 1 where both steps rise and fall alike
 * Errors:  none; without all four poses of both steps, or on level hips, it answers "cannot-tell"
 * Source:  Menz, Lord & Fitzpatrick (2003), Gait Posture 18:35, of heights instead of accelerations
 */
function stepToStep(study: Study, first: Step, second: Step): Answer {
  const needs = "the hips marked in all four poses of both steps, and the contact that ends them";
  const { next } = second;
  const frames = next === null ? 0 : next.frame - first.contact.frame;
  const keys = gathered([...first.panels, ...second.panels], (panel) => {
    const height = study.hipOf(panel);
    const at = (panel.frame - first.contact.frame) / frames;
    return height.kind === "value"
      ? [{ at, value: height.value, plusMinus: height.plusMinus }]
      : [];
  });
  const whole = [first, second].every((step) => STEP_POSES.every((pose) => step[pose] !== null));
  if (!whole || !(frames > 0) || keys.length < first.panels.length + second.panels.length) {
    return { kind: "cannot-tell", needs };
  }
  const samples = Array.from({ length: SAMPLES }, (_, n) => heightAt(keys, n / SAMPLES));
  const { even, odd } = harmonics(samples, MOST_HARMONICS);
  const all = even + odd;
  // An amplitude of n readings is known to √(2/n) of one's ±, and each sum has two of them.
  const own = Math.max(...keys.map(({ plusMinus }) => plusMinus)) * Math.sqrt(4 / keys.length);
  return answerOf(even / all, (own * Math.hypot(even, odd)) / all ** 2, "share", needs);
}

interface Key {
  readonly at: number;
  readonly value: number;
}

/** Straight between the keys around a moment of the stride; past the last, toward the first again. */
function heightAt(keys: readonly Key[], moment: number): number {
  const last = keys.findLastIndex(({ at }) => at <= moment);
  const from = keys[last];
  const to = keys[last + 1] ?? { at: 1, value: keys[0]?.value ?? Number.NaN };
  if (from === undefined) return Number.NaN;
  const span = to.at - from.at;
  return span > 0 ? from.value + ((to.value - from.value) * (moment - from.at)) / span : from.value;
}
