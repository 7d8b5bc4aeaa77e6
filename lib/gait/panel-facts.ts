import { type JointName, type LegLength, type ViewMarks, withFootOfStand } from "../body";
import type { NoReading } from "./answer";
import { type HipHeight, hipHeight } from "./hip-height";
import type { GroundMark } from "./seen-mark";
import type { WalkPanel } from "./walk";

/** What a panel's readings depend on beside the panel itself. */
export interface Measure {
  readonly leg: LegLength;
  /** The stand's side view, from which unmarked ankles and balls follow; null without a stand. */
  readonly stand: ViewMarks | null;
}

export interface Facts {
  readonly legUnits: number | null;
  readonly stand: ViewMarks | null;
  /** The panel with the ankles and balls that follow from the stand's foot. */
  readonly whole: WalkPanel;
  readonly hip: HipHeight | NoReading;
  /** Marks of the side view that were asked for, counted from the panel's middle. */
  readonly seen: Map<JointName, GroundMark | null>;
}

/**
 * What was read on a panel, for as long as somebody holds the panel. Panels are never changed but
 * replaced, so after one moved mark only its own panel is read again, unless the stand changed.
 */
const factsByPanel = new WeakMap<WalkPanel, Facts>();

export function factsOf(panel: WalkPanel, { leg, stand }: Measure): Facts {
  const legUnits = leg.kind === "value" ? leg.value : null;
  const known = factsByPanel.get(panel);
  if (known !== undefined && known.legUnits === legUnits && known.stand === stand) return known;
  const whole = legUnits === null || stand === null ? panel : withFoot(panel, stand, legUnits);
  const facts = { legUnits, stand, whole, hip: hipHeight(whole, leg), seen: new Map() };
  factsByPanel.set(panel, facts);
  return facts;
}

function withFoot(panel: WalkPanel, stand: ViewMarks, legUnits: number): WalkPanel {
  const side = withFootOfStand(panel.marks.side, stand, legUnits);
  return side === panel.marks.side ? panel : { ...panel, marks: { ...panel.marks, side } };
}
