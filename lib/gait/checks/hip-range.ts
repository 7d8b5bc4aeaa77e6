import { gathered } from "../../gathered";
import { rootSumSquare } from "../../geometry";
import { clearlyBeyond, greatestOf } from "../beyond";
import { byPattern } from "../by-pattern";
import type { Finding, Reading, Remark } from "../finding";
import { RANGE_LIMITS, RANGE_SOURCE } from "../methods/hip-range";
import { isQuiet } from "../quiet";
import type { Step } from "../step";
import { type PosedHips, stepHeights } from "../step-heights";
import type { Study } from "../study";
import { RANGE_TRAITS } from "../traits/hip-traits";
import { capital, listed, percent, sided } from "../words";
import { cannotTell, NEEDS_A_STEP, sound } from "./answers";
import { whoseStep } from "./step-words";

/**
 * With a larger ± hips that rise and sink by twice the gravest limit would pass. Leg lengths; marks placed
 * at the strip (± 3 % of a leg and less) give ± 4.3 % by one hip, which still answers. Hips that are level are
 * not told so by marks as coarse as that.
 */
const VAGUE_BEYOND = 0.1;

/**
 * How far do the hips rise and sink within a step? From a contact to the next, the highest less the lowest.
 *
 * Shapes:  one answer a step
 * Units:   leg lengths
 * Errors:  none; poses or hips that are missing, or marked too vaguely, answer "cannot-tell"
 * Source:  beside the limits, in `methods/hip-range`
 */
export function hipRange(study: Study): readonly Finding[] {
  if (isQuiet(study.walk.kind, "hip-range")) return [];
  if (study.pattern !== null) return byPattern(study, study.pattern, "hip-range", RANGE_TRAITS);
  const about = { check: "hip-range", side: null, panels: [] } as const;
  if (study.steps.length === 0) return [cannotTell(about, NEEDS_A_STEP)];
  return gathered(study.inSteps(judge), (told) => told);
}

function judge(study: Study, step: Step): Finding[] {
  const { weightOn: side, panels } = step;
  const about = { check: "hip-range", side, panels } as const;
  if (study.leg.kind === "cannot-tell") return [cannotTell(about, study.leg.needs)];
  const heights = stepHeights(study, step);
  const low = greatestOf(heights, ({ value }) => -value);
  const high = greatestOf(heights, ({ value }) => value);
  const needs = missing(step, heights);
  if (low === undefined || high === undefined) return [cannotTell(about, needs ?? NEEDS_A_STEP)];
  const measured: Reading = {
    value: high.value - low.value,
    plusMinus: rootSumSquare(high.plusMinus, low.plusMinus),
    unit: "leg",
  };
  // What bounces does so whatever else is drawn; only a whole step can be level.
  const found = remark(study, step, { heights, low, high, measured });
  if (needs !== null) {
    const bounces = found !== null && found.measured.value > found.expected.value;
    return [...(bounces ? [found] : []), cannotTell(about, needs)];
  }
  if (found !== null) return [found];
  if (!(measured.plusMinus <= VAGUE_BEYOND)) {
    return [cannotTell(about, `the hips marked more exactly in ${whoseStep(side)}`)];
  }
  return [sound(about, measured)];
}

interface Ranged {
  readonly heights: readonly PosedHips[];
  readonly low: PosedHips;
  readonly high: PosedHips;
  readonly measured: Reading;
}

function remark(study: Study, step: Step, { heights, low, high, measured }: Ranged): Remark | null {
  const { weightOn } = step;
  const { value, plusMinus } = measured;
  const broken = RANGE_LIMITS.find(
    ({ from, to }) =>
      clearlyBeyond(value, plusMinus, to) || clearlyBeyond(-value, plusMinus, -from),
  );
  if (broken === undefined) return null;
  const { from, to, level } = broken;
  const bounces = value > to;
  const limit = bounces ? to : from;
  // Of level hips chance says which are lowest: what tells is where they were to sink and to rise.
  const shown = bounces ? [low, high] : turningPoints(study, step, heights);
  const posed = shown.toSorted((a, b) => a.panel.frame - b.panel.frame);
  const passes = `${100 * from} to ${100 * to} %`;
  const seen = level === "shows" ? "will" : "may";
  return {
    kind: "remark",
    check: "hip-range",
    level,
    yardstick: study.yardstick,
    side: weightOn,
    panels: posed.map(({ panel }) => panel.id),
    frames: posed.map(({ panel }) => panel.frame),
    spots: posed.map(({ panel, view, joints }) => ({ panel: panel.id, view, joints })),
    measured,
    expected: { value: limit, plusMinus: 0, unit: "leg" },
    title: capital(`${sided(weightOn, "step")} ${bounces ? "bounces" : "stays level"}`),
    why: `In the ${sided(weightOn, "step")}${bounces ? `, from frame ${low.panel.frame} to ${high.panel.frame},` : ""} the hips rise and sink by ${percent(measured)} of a leg; ${passes} passes. The body ${seen} be seen to ${bounces ? "bounce" : "glide, as if it weighed nothing"}.`,
    source: RANGE_SOURCE,
    beyond: bounces ? (value - limit) / limit : (limit - value) / limit,
  };
}

/** The poses of a step where the yardstick has the hips lowest and highest. */
function turningPoints({ common }: Study, step: Step, heights: readonly PosedHips[]): PosedHips[] {
  const top = (common === "trade" ? step.up : null) ?? step.passing ?? step.up;
  const asked = [step.down ?? step.contact, top];
  return heights.filter(({ panel }) => asked.includes(panel));
}

/** What keeps the step from a whole answer, as a phrase after "needs"; null when nothing does. */
function missing(step: Step, heights: readonly PosedHips[]): string | null {
  const whose = sided(step.weightOn, "step");
  const tops = [step.passing, step.up].filter((panel) => panel !== null);
  if (tops.length === 0) return `the passing of the ${whose} drawn`;
  const read = new Set(heights.map(({ panel }) => panel));
  const asked = [step.contact, step.down, ...tops].filter((panel) => panel !== null);
  const unmarked = asked.filter((panel) => !read.has(panel)).map(({ pose }) => pose);
  return unmarked.length === 0
    ? null
    : `the hips marked at the ${listed(unmarked)} of the ${whose}`;
}
