import { ARC_NAMES, type Kept, type Remark, type Review, type Unit } from "../lib/gait";
import { cannotTellOnce } from "./cannot-tell";
import type { Checked } from "./check";

type Answer = Review["stepReadings"][number]["length"];

const UNITS: Readonly<Record<Unit, string>> = {
  leg: "leg length",
  frames: "frames",
  share: "share",
  "leg/frame": "leg length/frame",
  rad: "rad",
  poses: "poses",
  "rad/frame": "rad/frame",
  times: "times",
  number: "number",
  "leg/s": "leg length/s",
  "m/s": "m/s",
  "steps/min": "steps/min",
  seconds: "s",
  "m/(step/min)": "m/(step/min)",
};

/**
 * What `check --json` prints of a file. Frames are the sheet's, lengths are leg lengths, kept to a
 * ten-thousandth. What could not be read is null. `legLengthFrom` says where the drawn leg was measured:
 * on the `stand`, else by the median of the poses' `panels`, or of their `heels` where no ankle is marked.
 */
export function checkReport({ file, sheet, review }: Checked) {
  const { framesPerSecond, build } = sheet.head;
  const { statureMetres, legShare } = build;
  return {
    file,
    kind: "sheet" as const,
    yardstick: review.yardstick,
    framesPerSecond,
    legLengthMetres: statureMetres === null ? null : rounded(statureMetres * legShare),
    legLengthFrom: review.legLength.kind === "value" ? review.legLength.from : null,
    events: sheet.panels
      .filter(({ pose }) => pose === "contact")
      .map(({ weightOn, frame }) => ({ type: "contact" as const, side: weightOn, frame })),
    panels: sheet.panels.map((panel) => panelReport(panel, review)),
    steps: review.stepReadings.map(stepReport),
    strides: review.strideReadings.map(strideReport),
    remarks: review.remarks.map(remarkReport),
    kept: review.kept.map(keptReport),
    cannotTell: cannotTellOnce(review).map(({ check, side, needs }) => ({ check, side, needs })),
  };
}

/** What one panel reads, by its id and side: a number in leg lengths or radians, yes or no, or null. */
function panelReport({ id, frame, pose }: Checked["sheet"]["panels"][number], review: Review) {
  const readings = (review.readingsByPanel.get(id) ?? []).map(({ id: reading, side, answer }) => ({
    reading,
    side,
    value: answer.kind === "yes-no" ? answer.value : numberOf(answer),
    plusMinus: answer.kind === "value" ? rounded(answer.plusMinus) : null,
    unit: answer.kind === "value" ? UNITS[answer.unit] : null,
  }));
  return { frame, pose, readings };
}

/** Distances in leg lengths, times in seconds, shares of the step; `froude`, `metresPerSecond` and `walkRatio`
 * (metres per step a minute) are null without a stature. */
function stepReport(step: Review["stepReadings"][number]) {
  const { weightOn, frames, length, width, hipHeights, seconds, shares } = step;
  return {
    weightOn,
    frames,
    length: numberOf(length),
    width: numberOf(width),
    hipHeights: {
      contact: numberOf(hipHeights.contact),
      down: numberOf(hipHeights.down),
      passing: numberOf(hipHeights.passing),
      up: numberOf(hipHeights.up),
    },
    seconds: seconds === null ? null : rounded(seconds),
    shares: {
      down: shares.down === null ? null : rounded(shares.down),
      passing: shares.passing === null ? null : rounded(shares.passing),
      up: shares.up === null ? null : rounded(shares.up),
    },
    speed: numberOf(step.speed),
    metresPerSecond: numberOf(step.metresPerSecond),
    froude: numberOf(step.froude),
    cadence: numberOf(step.cadence),
    walkRatio: numberOf(step.walkRatio),
    doubleSupport: numberOf(step.doubleSupport),
    flight: numberOf(step.flight),
    hipRange: numberOf(step.hipRange),
    compassRise: numberOf(step.compassRise),
    hipShift: numberOf(step.hipShift),
  };
}

/** Two steps together; symmetry as shares, the index and the angle of each pair. */
function strideReport(stride: Review["strideReadings"][number]) {
  const pair = ({ index, angle }: (typeof stride)["symmetry"]["time"]) => ({
    index: numberOf(index),
    angle: numberOf(angle),
  });
  const { time, length, hipHeight, hipRange } = stride.symmetry;
  return {
    foot: stride.foot,
    frames: stride.frames,
    length: numberOf(stride.length),
    seconds: numberOf(stride.seconds),
    stance: numberOf(stride.stance),
    swing: numberOf(stride.swing),
    hipRange: numberOf(stride.hipRange),
    hipSway: numberOf(stride.hipSway),
    symmetry: {
      time: pair(time),
      length: pair(length),
      hipHeight: pair(hipHeight),
      hipRange: pair(hipRange),
    },
    stepToStep: numberOf(stride.stepToStep),
    seam: numberOf(stride.seam),
    loopGap: numberOf(stride.loopGap),
    arcs: Object.fromEntries(
      ARC_NAMES.map((arc) => {
        const { length, rise, sweep } = stride.arcs[arc];
        const told = { length: numberOf(length), rise: numberOf(rise), sweep: numberOf(sweep) };
        return [arc, told];
      }),
    ),
  };
}

function remarkReport({ check, level, side, frames, measured, expected, why }: Remark) {
  return {
    check,
    level,
    side,
    frames,
    measured: {
      value: rounded(measured.value),
      plusMinus: rounded(measured.plusMinus),
      unit: UNITS[measured.unit],
    },
    expected: { value: rounded(expected.value), unit: UNITS[expected.unit] },
    why,
  };
}

/** A remark that the team keeps on purpose: it does not count as showing. */
function keptReport({ remark, entry }: Kept) {
  const { scope, reason, by } = entry;
  return { ...remarkReport(remark), onPurpose: { scope: scope.kind, reason, by } };
}

function numberOf(answer: Answer): number | null {
  return answer.kind === "value" ? rounded(answer.value) : null;
}

function rounded(value: number): number {
  return Math.round(value * 10_000) / 10_000;
}
