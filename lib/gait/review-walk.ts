import type { LegLength } from "../body";
import { gathered } from "../gathered";
import { CHECKS } from "./checks";
import type { CannotTell, Finding, Remark } from "./finding";
import { type FootSpan, footfalls } from "./footfalls";
import { type GapCell, gapRow } from "./gap-row";
import { type HipCurve, hipCurve } from "./hip-curve";
import { type Kept, keepOnPurpose, type Lapsed } from "./keep-on-purpose";
import type { OnPurpose } from "./on-purpose";
import { type PanelReading, panelReadings } from "./panel-readings";
import type { Against } from "./pattern";
import { type Quieted, quietedIn } from "./quiet";
import { rankRemarks } from "./rank-remarks";
import type { Step } from "./step";
import { type StepReading, stepReading } from "./step-readings";
import { type StrideReading, strideReadings } from "./stride-readings";
import { type Study, studyWalk } from "./study";
import { soundOnlyIfExact } from "./vague-marks";
import type { Walk, WalkPanel, Yardstick } from "./walk";

/** A walk read whole: what was measured, and what there is to say about it. */
export interface Review {
  readonly yardstick: Yardstick;
  /** The leg on the paper and where it was measured, or what is needed for that. */
  readonly legLength: LegLength;
  readonly steps: readonly Step[];
  readonly stepReadings: readonly StepReading[];
  readonly strideReadings: readonly StrideReading[];
  /** Every check's answers, in the order of checks and steps. */
  readonly findings: readonly Finding[];
  /** The remarks among them that nobody keeps on purpose, gravest first. */
  readonly remarks: readonly Remark[];
  /** The remarks that are kept on purpose, gravest first, each with the entry that keeps it. */
  readonly kept: readonly Kept[];
  /** Entries whose reading is no longer what was kept; their remarks are among the open ones again. */
  readonly lapsed: readonly Lapsed[];
  /** Entries in whose scope nothing is remarked by this yardstick: kept in case it comes back. */
  readonly settled: readonly OnPurpose[];
  readonly cannotTell: readonly CannotTell[];
  /** What this kind of walk asks not to be judged: said once. */
  readonly quieted: readonly Quieted[];
  /** The open remarks that speak of a panel, by its id, gravest first. */
  readonly remarksByPanel: ReadonlyMap<string, readonly Remark[]>;
  /** What is kept on a panel, likewise. */
  readonly keptByPanel: ReadonlyMap<string, readonly Kept[]>;
  readonly readingsByPanel: ReadonlyMap<string, readonly PanelReading[]>;
  readonly hipCurve: HipCurve;
  readonly gapRow: readonly GapCell[];
  /** Which foot is down when, and how: left, then right. */
  readonly footfalls: readonly FootSpan[];
}

/**
 * Reads a walk and judges it by a yardstick. It runs a list of checks and knows none by name.
 *
 * Shapes:  any number of panels, in frame order
 * Units:   leg lengths, frames, shares, radians
 * Errors:  none; what cannot be read answers "cannot-tell"
 * @param onPurpose what the team keeps: such remarks are told apart from the others
 * @param against what the yardsticks this-walk and version go by
 */
export function reviewWalk(
  walk: Walk,
  yardstick: Yardstick,
  onPurpose: readonly OnPurpose[] = [],
  against: Against = {},
): Review {
  const study = studyWalk(walk, yardstick, against);
  const answers = gathered(CHECKS, (check) => check(study));
  const findings = soundOnlyIfExact(answers, walk, study.leg);
  const told = rankRemarks(findings.filter((finding) => finding.kind === "remark"));
  const { open: remarks, kept, lapsed, settled } = keepOnPurpose(told, onPurpose);
  const inSteps = whenAsked(() => study.steps.map((step) => stepReading(study, step)));
  const inStrides = whenAsked(() => strideReadings(study));
  const inPanels = whenAsked(() => readingsByPanel(study));
  return {
    yardstick,
    legLength: study.leg,
    steps: study.steps,
    get stepReadings() {
      return inSteps();
    },
    get strideReadings() {
      return inStrides();
    },
    findings,
    remarks,
    kept,
    lapsed,
    settled,
    cannotTell: findings.filter((finding) => finding.kind === "cannot-tell"),
    quieted: quietedIn(walk.kind, yardstick),
    remarksByPanel: byPanel(walk, remarks, (remark) => remark),
    keptByPanel: byPanel(walk, kept, ({ remark }) => remark),
    get readingsByPanel() {
      return inPanels();
    },
    hipCurve: hipCurve(study),
    gapRow: gapRow(study, remarks),
    footfalls: footfalls(study),
  };
}

/** Only tables show these, of one panel and its step: they are read when somebody looks. */
function whenAsked<Told>(work: () => Told): () => Told {
  let told: { readonly is: Told } | null = null;
  return () => {
    told ??= { is: work() };
    return told.is;
  };
}

function readingsByPanel(study: Study): Review["readingsByPanel"] {
  return new Map(study.walk.panels.map((panel) => [panel.id, study.once(panel, readings)]));
}

function readings({ leg, walk, whole }: Study, panel: WalkPanel): readonly PanelReading[] {
  return panelReadings(whole(panel), leg, walk.load ?? 0);
}

function byPanel<T>({ panels }: Walk, told: readonly T[], remarkOf: (one: T) => Remark) {
  return new Map(
    panels.map(({ id }) => [id, told.filter((one) => remarkOf(one).panels.includes(id))]),
  );
}
