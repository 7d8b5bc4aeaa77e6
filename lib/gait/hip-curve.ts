import type { Side } from "../body";
import { gathered } from "../gathered";
import { type Frame, STEP_POSES, type StepPose } from "../motion";
import type { NoReading } from "./answer";
import { stepFrames } from "./expected-frames";
import type { HipHeight } from "./hip-height";
import { NEIGHBOURS } from "./methods/neighbouring-steps";
import { patternFor } from "./pattern";
import type { Step } from "./step";
import type { Study } from "./study";

/** One panel's hips on the chart. */
export interface HipPoint {
  readonly panel: string;
  readonly frame: Frame;
  readonly height: HipHeight | NoReading;
}

/** What the yardstick expects at a moment: leg lengths, null where it sets no bound. */
export interface BandPoint {
  /** Frames, counted from 1; may lie between two. */
  readonly frame: number;
  readonly low: number | null;
  readonly high: number | null;
}

/** The expected span of one step, left to right. */
export interface HipBand {
  readonly weightOn: Side | null;
  readonly points: readonly BandPoint[];
}

/** The hips' height over the strip, and what was expected of it. */
export interface HipCurve {
  readonly points: readonly HipPoint[];
  readonly bands: readonly HipBand[];
}

/**
 * Mean hip height over its contact at each tenth of the step, and its sd over people. Leg lengths.
 * Source: 72 captured walks of 15 people (real-walk statistics, 3).
 */
const LIFE_CURVE: readonly { readonly mean: number; readonly sd: number }[] = [
  { mean: 0, sd: 0 },
  { mean: -0.0024, sd: 0.003 },
  { mean: 0.0024, sd: 0.006 },
  { mean: 0.0115, sd: 0.007 },
  { mean: 0.0199, sd: 0.01 },
  { mean: 0.023, sd: 0.013 },
  { mean: 0.0189, sd: 0.014 },
  { mean: 0.016, sd: 0.014 },
  { mean: 0.0154, sd: 0.012 },
  { mean: 0.0117, sd: 0.01 },
  { mean: 0.0033, sd: 0.008 },
];

/** The band reaches two sd either way: about 19 people in 20. */
const BAND_SD = 2;

/**
 * The hip line's chart: each panel's height, and per step the band that the yardstick expects. Life
 * has a measured band around the drawn contact. The trade gives an order and no numbers, so its
 * band is what the other poses of the same step leave open, and may be open to one side.
 *
 * Shapes:  a point a panel; a band a step whose contact could be read
 * Units:   frames, leg lengths
 */
export function hipCurve(study: Study): HipCurve {
  const points = study.walk.panels.map((panel) => ({
    panel: panel.id,
    frame: panel.frame,
    height: study.hipOf(panel),
  }));
  const bandOf =
    study.pattern !== null ? patternBand : study.common === "life" ? lifeBand : tradeBand;
  const bands = study.steps.map((step) => ({
    weightOn: step.weightOn,
    points: bandOf(study, step),
  }));
  return { points, bands: bands.filter((band) => band.points.length > 0) };
}

function lifeBand(study: Study, step: Step): BandPoint[] {
  const contact = heightOf(study, step, "contact");
  const length = stepFrames(step);
  if (contact === null || length === null) return [];
  return LIFE_CURVE.map(({ mean, sd }, tenth) => ({
    frame: step.contact.frame + (length * tenth) / (LIFE_CURVE.length - 1),
    low: contact + mean - BAND_SD * sd,
    high: contact + mean + BAND_SD * sd,
  }));
}

/** What the pattern step does over its contact, give or take what neighbouring steps differ by. */
function patternBand(study: Study, step: Step): BandPoint[] {
  const { pattern } = study;
  const contact = heightOf(study, step, "contact");
  if (pattern?.kind !== "pattern" || contact === null) return [];
  const rule = patternFor(pattern, study, step);
  if (rule === null) return [];
  const base = heightOf(pattern.study, rule, "contact");
  return gathered(STEP_POSES, (pose) => {
    const panel = step[pose];
    const height = heightOf(pattern.study, rule, pose);
    if (panel === null || height === null || base === null || pose === "contact") return [];
    const middle = contact + height - base;
    return [{ frame: panel.frame, low: middle - MAY_SHOW, high: middle + MAY_SHOW }];
  });
}

const MAY_SHOW = NEIGHBOURS.hips.grades.at(-1)?.value ?? 0;

function tradeBand(study: Study, step: Step): BandPoint[] {
  const contact = heightOf(study, step, "contact");
  const passing = heightOf(study, step, "passing");
  const up = heightOf(study, step, "up");
  const spans = [
    { panel: step.down, low: null, high: contact },
    {
      panel: step.passing,
      low: contact,
      high: up !== null && contact !== null && up < contact ? null : up,
    },
    { panel: step.up, low: passing, high: null },
  ];
  return gathered(spans, ({ panel, low, high }) =>
    panel === null || (low === null && high === null) ? [] : [{ frame: panel.frame, low, high }],
  );
}

function heightOf(study: Study, step: Step, pose: StepPose): number | null {
  const panel = step[pose];
  if (panel === null) return null;
  const height = study.hipOf(panel);
  return height.kind === "value" ? height.value : null;
}
