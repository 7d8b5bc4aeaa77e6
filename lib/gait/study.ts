import type { JointName, LegLength } from "../body";
import type { NoReading } from "./answer";
import type { Finding } from "./finding";
import { type GroundMark, groundMark } from "./ground-mark";
import { type HipHeight, hipHeight } from "./hip-height";
import { type PanelReading, panelReadings } from "./panel-readings";
import { findSteps, type Step } from "./step";
import type { Walk, WalkPanel, Yardstick } from "./walk";
import { walkLegLength } from "./walk-leg";

/** A walk laid out for the checks: what each of them would otherwise work out again. */
export interface Study {
  readonly walk: Walk;
  readonly yardstick: Yardstick;
  readonly leg: LegLength;
  readonly steps: readonly Step[];
  hipOf(panel: WalkPanel): HipHeight | NoReading;
  readingsOf(panel: WalkPanel): readonly PanelReading[];
  /** A mark of the side view in ground space, or null. */
  ground(panel: WalkPanel, joint: JointName): GroundMark | null;
}

/** One question about a walk: a pure function of its study. */
export type Check = (study: Study) => readonly Finding[];

interface Facts {
  readonly legUnits: number | null;
  readonly hip: HipHeight | NoReading;
  readonly readings: readonly PanelReading[];
}

/**
 * What was read on a panel, for as long as somebody holds the panel. Panels are never changed but
 * replaced, so after one moved mark only its own panel is read again, unless the leg changed too.
 */
const factsByPanel = new WeakMap<WalkPanel, Facts>();

function factsOf(panel: WalkPanel, leg: LegLength): Facts {
  const legUnits = leg.kind === "value" ? leg.value : null;
  const known = factsByPanel.get(panel);
  if (known !== undefined && known.legUnits === legUnits) return known;
  const facts = { legUnits, hip: hipHeight(panel, leg), readings: panelReadings(panel, leg) };
  factsByPanel.set(panel, facts);
  return facts;
}

/** Lays a walk out to be judged by a yardstick. */
export function studyWalk(walk: Walk, yardstick: Yardstick): Study {
  const leg = walkLegLength(walk);
  return {
    walk,
    yardstick,
    leg,
    steps: findSteps(walk.panels),
    hipOf: (panel) => factsOf(panel, leg).hip,
    readingsOf: (panel) => factsOf(panel, leg).readings,
    ground: (panel, joint) => groundMark(panel, joint, walk, leg),
  };
}
