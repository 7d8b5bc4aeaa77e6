import type { JointName, LegLength } from "../body";
import type { NoReading } from "./answer";
import type { Finding } from "./finding";
import { placeOf } from "./ground-mark";
import type { HipHeight } from "./hip-height";
import { asBefore, memoryBy } from "./memory";
import { factsOf, type Measure } from "./panel-facts";
import { type Against, type Pattern, patternOf } from "./pattern";
import { placesWithin } from "./places/places-of";
import { rowMemory } from "./row-memory";
import { type GroundMark, seenMark } from "./seen-mark";
import { findSteps, type Step } from "./step";
import { type StepKeys, stepKeys, termsOf } from "./step-keys";
import { type CommonYardstick, commonOf, type Walk, type WalkPanel, type Yardstick } from "./walk";
import { walkLegLength } from "./walk-leg";

/** What is read of a panel or a step, and by what else. */
type Work<Of, By extends readonly unknown[], Told> = (study: Study, one: Of, ...by: By) => Told;

/** A walk laid out for the checks: what each of them would otherwise work out again. */
export interface Study {
  readonly walk: Walk;
  readonly yardstick: Yardstick;
  /** What is drawn and timed by, whatever the yardstick. */
  readonly common: CommonYardstick;
  /** The step that the others are held against; null by trade and life, which go by no step. */
  readonly pattern: Pattern | NoReading | null;
  readonly leg: LegLength;
  readonly steps: readonly Step[];
  /** Height of a panel's hips. */
  hipOf(panel: WalkPanel): HipHeight | NoReading;
  /** A panel with the ankles and balls that follow from the stand's foot. */
  whole(panel: WalkPanel): WalkPanel;
  /** A mark of the side view in ground space, or null; ± is the mark's own: see `groundBetween`. */
  ground(panel: WalkPanel, joint: JointName): GroundMark | null;
  /** ± of how far apart two panels stand on the ground, leg lengths; 0 unless places are solved. */
  placesWithin(from: WalkPanel, to: WalkPanel): number;
  /** The same counted from the panel's middle: for what is compared within one panel, wherever it stands. */
  seen(panel: WalkPanel, joint: JointName): GroundMark | null;
  /**
   * What a function reads on one panel, worked out once for as long as somebody holds the panel and the terms
   * of the walk are the same. It may ask for anything about that panel but a solved place, and for what it is
   * handed beside, which is known by its identity: other panels, places, steps. For nothing else of the walk.
   */
  once<Told, By extends readonly unknown[]>(
    panel: WalkPanel,
    work: Work<WalkPanel, By, Told>,
    ...by: By
  ): Told;
  /**
   * The same of a step: of its panels and places, and its next contact. A step that is handed beside counts with
   * the step that follows it.
   */
  onceIn<Told, By extends readonly unknown[]>(
    step: Step,
    work: Work<Step, By, Told>,
    ...by: By
  ): Told;
  /** The same of a step and the one that follows it. */
  onceWithNext<Told, By extends readonly unknown[]>(
    step: Step,
    work: Work<Step, By, Told>,
    ...by: By
  ): Told;
  /** The same as `once` of every panel, in their order. */
  inPanels<Told, By extends readonly unknown[]>(
    work: Work<WalkPanel, By, Told>,
    ...by: By
  ): readonly Told[];
  /** The same as `onceIn` of every step, in their order. */
  inSteps<Told, By extends readonly unknown[]>(
    work: Work<Step, By, Told>,
    ...by: By
  ): readonly Told[];
  /** The same as `onceWithNext` of every step. */
  inStepsWithNext<Told, By extends readonly unknown[]>(
    work: Work<Step, By, Told>,
    ...by: By
  ): readonly Told[];
}

/** One question about a walk: a pure function of its study. */
export type Check = (study: Study) => readonly Finding[];

/**
 * Lays a walk out to be judged by a yardstick.
 *
 * @param against what the yardsticks this-walk and version go by
 */
export function studyWalk(walk: Walk, yardstick: Yardstick, against: Against = {}): Study {
  const study = readWalk(walk, yardstick);
  study.pattern = patternOf(study, against, (other) => readWalk(other, yardstick));
  return study;
}

/** A study before its pattern is told, which is found in what was read. */
interface Draft extends Study {
  pattern: Study["pattern"];
}

function readWalk(walk: Walk, yardstick: Yardstick): Draft {
  const leg = walkLegLength(walk);
  const stand = walk.panels.find(({ pose }) => pose === "stand")?.marks.side ?? null;
  const measure: Measure = { leg, stand };
  const terms = [yardstick, ...termsOf(walk, leg)];
  const [first] = walk.panels;
  const known = first === undefined ? terms : asBefore(first, terms);
  const [memory, rows] = [memoryBy(known), rowMemory(first, known)];
  let keys: StepKeys | null = null;
  const keysOf = () => {
    keys ??= stepKeys(study);
    return keys;
  };
  const seen = (panel: WalkPanel, joint: JointName) => {
    const facts = factsOf(panel, measure);
    const known = facts.seen.get(joint);
    if (known !== undefined) return known;
    const mark = seenMark(facts.whole, joint, leg);
    facts.seen.set(joint, mark);
    return mark;
  };
  const ofSteps = <Told, By extends readonly unknown[]>(
    keyOf: (step: Step) => readonly unknown[],
    work: Work<Step, By, Told>,
    by: By,
  ): readonly Told[] => {
    const keys = study.steps.map(keyOf);
    const others = by.map(keysOf().ofOther);
    return rows.of(work, others, keys, (at) =>
      ofStep(keys[at] as readonly unknown[], study.steps[at] as Step, work, by),
    );
  };
  const ofStep = <Told, By extends readonly unknown[]>(
    key: readonly unknown[],
    step: Step,
    work: Work<Step, By, Told>,
    by: By,
  ): Told => {
    const all = by.length === 0 ? key : [key, ...by.map(keysOf().ofOther)];
    const known = memory.of<Told>(step.contact, work, all);
    return known === undefined
      ? memory.keep(step.contact, work, all, work(study, step, ...by))
      : known.told;
  };
  const study: Draft = {
    walk,
    yardstick,
    common: commonOf(yardstick),
    pattern: null,
    leg,
    steps: findSteps(walk.panels),
    hipOf: (panel) => factsOf(panel, measure).hip,
    whole: (panel) => factsOf(panel, measure).whole,
    ground(panel, joint) {
      const mark = seen(panel, joint);
      const place = placeOf(panel, walk);
      if (mark === null || !Number.isFinite(place)) return null;
      return { x: place + mark.x, y: mark.y, plusMinus: mark.plusMinus };
    },
    placesWithin: (from, to) => placesWithin(walk)(from, to),
    seen,
    once<Told, By extends readonly unknown[]>(
      panel: WalkPanel,
      work: Work<WalkPanel, By, Told>,
      ...by: By
    ) {
      const known = memory.of<Told>(panel, work, by);
      return known === undefined
        ? memory.keep(panel, work, by, work(study, panel, ...by))
        : known.told;
    },
    onceIn<Told, By extends readonly unknown[]>(step: Step, work: Work<Step, By, Told>, ...by: By) {
      return ofStep(keysOf().ofStep(step), step, work, by);
    },
    onceWithNext<Told, By extends readonly unknown[]>(
      step: Step,
      work: Work<Step, By, Told>,
      ...by: By
    ) {
      return ofStep(keysOf().withNext(step), step, work, by);
    },
    inPanels<Told, By extends readonly unknown[]>(work: Work<WalkPanel, By, Told>, ...by: By) {
      const { panels } = walk;
      return rows.of(work, by, panels, (at) => study.once(panels[at] as WalkPanel, work, ...by));
    },
    inSteps<Told, By extends readonly unknown[]>(work: Work<Step, By, Told>, ...by: By) {
      return ofSteps(keysOf().ofStep, work, by);
    },
    inStepsWithNext<Told, By extends readonly unknown[]>(work: Work<Step, By, Told>, ...by: By) {
      return ofSteps(keysOf().withNext, work, by);
    },
  };
  return study;
}
