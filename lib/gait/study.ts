import { type JointName, type LegLength, type ViewMarks, withFootOfStand } from "../body";
import type { NoReading } from "./answer";
import type { Finding } from "./finding";
import { placeOf } from "./ground-mark";
import { type HipHeight, hipHeight } from "./hip-height";
import { type Against, type Pattern, patternOf } from "./pattern";
import { type GroundMark, seenMark } from "./seen-mark";
import { findSteps, type Step } from "./step";
import { type CommonYardstick, commonOf, type Walk, type WalkPanel, type Yardstick } from "./walk";
import { walkLegLength } from "./walk-leg";

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
  /** A mark of the side view in ground space, or null. */
  ground(panel: WalkPanel, joint: JointName): GroundMark | null;
  /** The same counted from the panel's middle: for what is compared within one panel, wherever it stands. */
  seen(panel: WalkPanel, joint: JointName): GroundMark | null;
  /** What a function reads on one panel alone, worked out once for as long as somebody holds the panel. */
  once<Told>(panel: WalkPanel, work: PanelWork<Told>): Told;
}

/** Work on one panel. It is known by its identity, so it is to be a function of a file, not made anew. */
export type PanelWork<Told> = (study: Study, panel: WalkPanel) => Told;

/** One question about a walk: a pure function of its study. */
export type Check = (study: Study) => readonly Finding[];

/** What a panel's readings depend on beside the panel itself. */
interface Measure {
  readonly leg: LegLength;
  /** The stand's side view, from which unmarked ankles and balls follow; null without a stand. */
  readonly stand: ViewMarks | null;
  /** What is carried, as a share of body mass. */
  readonly load: number;
}

interface Facts {
  readonly legUnits: number | null;
  readonly load: number;
  readonly stand: ViewMarks | null;
  /** The panel with the ankles and balls that follow from the stand's foot. */
  readonly whole: WalkPanel;
  readonly hip: HipHeight | NoReading;
  /** Marks of the side view that were asked for, counted from the panel's middle. */
  readonly seen: Map<JointName, GroundMark | null>;
  /** By the work that was done. */
  readonly told: Map<unknown, unknown>;
}

/**
 * What was read on a panel, for as long as somebody holds the panel. Panels are never changed but
 * replaced, so after one moved mark only its own panel is read again, unless the stand changed.
 */
const factsByPanel = new WeakMap<WalkPanel, Facts>();

function factsOf(panel: WalkPanel, { leg, stand, load }: Measure): Facts {
  const legUnits = leg.kind === "value" ? leg.value : null;
  const known = factsByPanel.get(panel);
  if (
    known !== undefined &&
    known.legUnits === legUnits &&
    known.stand === stand &&
    known.load === load
  )
    return known;
  const whole = legUnits === null || stand === null ? panel : withFoot(panel, stand, legUnits);
  const hip = hipHeight(whole, leg);
  const facts = { legUnits, load, stand, whole, hip, seen: new Map(), told: new Map() };
  factsByPanel.set(panel, facts);
  return facts;
}

function withFoot(panel: WalkPanel, stand: ViewMarks, legUnits: number): WalkPanel {
  const side = withFootOfStand(panel.marks.side, stand, legUnits);
  return side === panel.marks.side ? panel : { ...panel, marks: { ...panel.marks, side } };
}

/**
 * Lays a walk out to be judged by a yardstick.
 *
 * @param against what the yardsticks this-walk and version go by
 */
export function studyWalk(walk: Walk, yardstick: Yardstick, against: Against = {}): Study {
  const read = readWalk(walk, yardstick);
  return { ...read, pattern: patternOf(read, against, (other) => readWalk(other, yardstick)) };
}

/** A walk's readings, before anything is said about the step that it is held against. */
function readWalk(walk: Walk, yardstick: Yardstick): Study {
  const leg = walkLegLength(walk);
  const stand = walk.panels.find(({ pose }) => pose === "stand")?.marks.side ?? null;
  const measure: Measure = { leg, stand, load: walk.load ?? 0 };
  const seen = (panel: WalkPanel, joint: JointName) => {
    const facts = factsOf(panel, measure);
    const known = facts.seen.get(joint);
    if (known !== undefined) return known;
    const mark = seenMark(facts.whole, joint, leg);
    facts.seen.set(joint, mark);
    return mark;
  };
  const study: Study = {
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
      return mark === null || !Number.isFinite(place) ? null : { ...mark, x: place + mark.x };
    },
    seen,
    once<Told>(panel: WalkPanel, work: PanelWork<Told>): Told {
      const { told } = factsOf(panel, measure);
      if (!told.has(work)) told.set(work, work(study, panel));
      return told.get(work) as Told;
    },
  };
  return study;
}
