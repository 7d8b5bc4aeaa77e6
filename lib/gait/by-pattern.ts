import { gathered } from "../gathered";
import { rootSumSquare } from "../geometry";
import type { StepPose } from "../motion";
import type { NoReading } from "./answer";
import { clearlyBeyond } from "./beyond";
import { cannotTell, NEEDS_A_STEP, sound } from "./checks/answers";
import { whoseStep } from "./checks/step-words";
import type { CheckId, Finding, Reading, Remark, Spot, Subject } from "./finding";
import type { Nearness } from "./methods/neighbouring-steps";
import { type Pattern, patternFor } from "./pattern";
import { isQuiet, type QuietTopic } from "./quiet";
import type { Step } from "./step";
import type { Study } from "./study";
import type { WalkPanel } from "./walk";
import { capital, degrees, framesInWords, sided } from "./words";

/** What a trait reads on one step, and where. */
export interface TraitReading {
  readonly kind: "read";
  readonly reading: Reading;
  /** In frame order. */
  readonly panels: readonly WalkPanel[];
  readonly spots: readonly Spot[];
}

/** Something of a step that its pattern step has, too. */
export interface Trait {
  /** What differs, for a heading: "the sway". */
  readonly name: string;
  readonly subject?: Subject;
  /** What it is, as a phrase: "the hips at passing over the contact's". */
  readonly what: string;
  /** The same of a reading below 0, which is then told without its sign: "the hips at passing under the contact's". */
  readonly below?: string;
  /** What a viewer sees where it is another. */
  readonly sees: string;
  /** How much of it passes as the same. */
  readonly near: Nearness;
  /** Held apart by their difference, or by it over their mean (a symmetry index, for lengths and times). */
  readonly by: "difference" | "index";
  /** Asked only where the pattern step has this pose. */
  readonly pose?: StepPose;
  readonly topic?: QuietTopic;
  read(study: Study, step: Step): TraitReading | NoReading;
}

/**
 * Holds each step's traits against the pattern step's: the one rule for every check of style by the yardsticks
 * this-walk and version. The pattern step is as it is, and nothing is said of it.
 *
 * Shapes:  an answer a trait of each step that is not the pattern
 * Units:   those of the trait
 * Errors:  none; without a pattern, or what either step lacks for it, it answers "cannot-tell"
 */
export function byPattern(
  study: Study,
  pattern: Pattern | NoReading,
  check: CheckId,
  traits: readonly Trait[],
): readonly Finding[] {
  const about = { check, side: null, panels: [] } as const;
  if (pattern.kind === "cannot-tell") return [cannotTell(about, pattern.needs)];
  if (study.steps.length === 0) return [cannotTell(about, NEEDS_A_STEP)];
  const work = workOf(check, traits);
  return gathered(study.inStepsWithNext(work), (told) => told);
}

type Work = (study: Study, step: Step) => readonly Finding[];

/** The work of holding a step by some traits, which is remembered by that and so made once for a list of them. */
const works = new WeakMap<readonly Trait[], Work>();

function workOf(check: CheckId, traits: readonly Trait[]): Work {
  const known = works.get(traits);
  if (known !== undefined) return known;
  const work: Work = (study, step) => {
    const { pattern } = study;
    const rule = pattern?.kind === "pattern" ? patternFor(pattern, study, step) : null;
    if (pattern?.kind !== "pattern" || rule === null) return [];
    return traits
      .filter((trait) => isAsked(study, rule, trait))
      .map((trait) => held(study, { step, rule, pattern, check, trait }));
  };
  works.set(traits, work);
  return work;
}

function isAsked({ walk, yardstick }: Study, rule: Step, { pose, topic }: Trait): boolean {
  const quiet = topic !== undefined && isQuiet(walk.kind, topic, yardstick);
  return !quiet && (pose === undefined || rule[pose] !== null);
}

interface Held {
  readonly step: Step;
  readonly rule: Step;
  readonly pattern: Pattern;
  readonly check: CheckId;
  readonly trait: Trait;
}

function held(study: Study, one: Held): Finding {
  const { step, rule, pattern, check, trait } = one;
  const here = trait.read(study, step);
  const there = trait.read(pattern.study, rule);
  const about = { check, side: step.weightOn, panels: step.panels };
  if (here.kind === "cannot-tell") return cannotTell(about, here.needs);
  if (there.kind === "cannot-tell") {
    return cannotTell(about, `${there.needs}, in the step it goes by`);
  }
  const apart = apartOf(trait, here.reading, there.reading);
  if (!Number.isFinite(apart.value)) return cannotTell(about, `${trait.what} to be read`);
  const grade = trait.near.grades.find(({ value }) =>
    clearlyBeyond(apart.value, apart.plusMinus, value),
  );
  if (grade === undefined) return sound({ ...about, panels: here.panels }, here.reading);
  const own = study.yardstick === "this-walk";
  const ruler = `${whoseStep(rule.weightOn)}${own ? "" : " of the walk it goes by"}`;
  const passes = inWords({ value: grade.value, plusMinus: 0, unit: trait.near.unit });
  return {
    kind: "remark",
    check,
    level: grade.level,
    yardstick: study.yardstick,
    ...(trait.subject === undefined ? {} : { subject: trait.subject }),
    side: step.weightOn,
    panels: here.panels.map(({ id }) => id),
    frames: here.panels.map(({ frame }) => frame),
    spots: here.spots,
    measured: here.reading,
    expected: there.reading,
    title: capital(`${sided(step.weightOn, "step")}: ${trait.name} not as in the step it goes by`),
    why: `In ${whoseStep(step.weightOn)} ${told(trait, here.reading)}. ${ruled(trait, ruler, [here.reading, there.reading])}, so ${howFar(trait, apart, [here.reading, there.reading])}; up to ${passes} passes as the same. ${capital(trait.sees)}.`,
    source: trait.near.source,
    beyond: (apart.value - grade.value) / grade.value,
  } satisfies Remark;
}

/** Here, and in the step that it is held against. */
type HereAndThere = readonly [here: Reading, there: Reading];

const isBelow = ({ below }: Trait, { value }: Reading): boolean => below !== undefined && value < 0;

/** What was read, as a phrase and a number. */
function told(trait: Trait, reading: Reading): string {
  const below = isBelow(trait, reading) ? trait.below : undefined;
  if (below === undefined) return `${trait.what}: ${inWords(reading)}`;
  return `${below}: ${inWords({ ...reading, value: -reading.value })}`;
}

/** The phrase is said again only where it turns round. */
function ruled(trait: Trait, ruler: string, [here, there]: HereAndThere): string {
  if (isBelow(trait, here) !== isBelow(trait, there)) {
    return `In ${ruler}, which it goes by, ${told(trait, there)}`;
  }
  const bare = isBelow(trait, there) ? { ...there, value: -there.value } : there;
  return `In ${ruler}, which it goes by: ${inWords(bare)}`;
}

function howFar(trait: Trait, apart: Reading, [here, there]: HereAndThere): string {
  if (isBelow(trait, here) !== isBelow(trait, there)) return `they are ${inWords(apart)} apart`;
  const isMore = isBelow(trait, here) ? here.value < there.value : here.value > there.value;
  return `it is ${inWords(apart)} ${isMore ? "more" : "less"} here`;
}

function apartOf(trait: Trait, here: Reading, there: Reading): Reading {
  const value = Math.abs(here.value - there.value);
  const plusMinus = rootSumSquare(here.plusMinus, there.plusMinus);
  if (trait.by === "difference") return { value, plusMinus, unit: here.unit };
  const mean = (here.value + there.value) / 2;
  return mean > 0
    ? { value: value / mean, plusMinus: plusMinus / mean, unit: "share" }
    : { value: Number.NaN, plusMinus: 0, unit: "share" };
}

/** A reading with its sign, as a person reads it. */
function inWords(reading: Reading): string {
  const { value, plusMinus, unit } = reading;
  const sign = value < 0 ? "−" : "";
  if (unit === "rad") return `${sign}${degrees(reading)}`;
  if (unit === "frames") return framesInWords(value);
  const most = plusMinus > 0 ? ` ± ${(100 * plusMinus).toFixed(1)}` : "";
  const shown = `${sign}${(100 * Math.abs(value)).toFixed(1)}${most} %`;
  return unit === "leg" ? `${shown} of a leg` : shown;
}
