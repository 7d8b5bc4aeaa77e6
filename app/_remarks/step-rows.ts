import { type Answer, ARC_NAMES, type Review } from "../../lib/gait";
import { remarks as words } from "../_words";
import { tellReading } from "./tell-reading";

/** One row of readings that belong to no single panel. */
export interface StepRow {
  readonly name: string;
  readonly value: string;
}

type StepReading = Review["stepReadings"][number];
type StrideReading = Review["strideReadings"][number];

/** What a step reads, as far as it can be told: what is in metres is left out without a stature. */
export function stepRows(step: StepReading): readonly StepRow[] {
  const { seconds } = step;
  const time: Answer =
    seconds === null
      ? { kind: "cannot-tell", needs: "" }
      : { kind: "value", value: seconds, plusMinus: 0, unit: "seconds" };
  const names = words.readings.ofStep;
  return told([
    [names.length, step.length],
    [names.width, step.width],
    [names.seconds, time],
    [names.cadence, step.cadence],
    [names.speed, step.speed],
    [names.metresPerSecond, step.metresPerSecond],
    [names.froude, step.froude],
    [names.doubleSupport, step.doubleSupport],
    [names.flight, step.flight],
    [names.hipRange, step.hipRange],
    [names.compassRise, step.compassRise],
    [names.hipShift, step.hipShift],
  ]);
}

/** What two steps together read, likewise. */
export function strideRows(stride: StrideReading): readonly StepRow[] {
  const names = words.readings.ofStride;
  const { symmetry } = stride;
  return told([
    [names.length, stride.length],
    [names.stance, stride.stance],
    [names.swing, stride.swing],
    [names.hipRange, stride.hipRange],
    [names.hipSway, stride.hipSway],
    [names.time, symmetry.time.index],
    [names.lengths, symmetry.length.index],
    [names.lengthAngle, symmetry.length.angle],
    [names.stepToStep, stride.stepToStep],
    [names.seam, stride.seam],
    [names.loopGap, stride.loopGap],
    ...ARC_NAMES.filter((arc) => arc !== "hips").flatMap((arc) => {
      const [joint, { rise, sweep }] = [arc.replace("-", " "), stride.arcs[arc]];
      return [[names.arc.rise(joint), rise] as const, [names.arc.sweep(joint), sweep] as const];
    }),
  ]);
}

/** The step that a panel belongs to, and the stride of that step; null where it belongs to none, or nothing was read. */
export function readingsAround(
  review: Review | null,
  panel: string,
): { readonly step: StepReading | null; readonly stride: StrideReading | null } {
  if (review === null) return { step: null, stride: null };
  const at = review.steps.findIndex(({ panels }) => panels.some(({ id }) => id === panel));
  const last = review.steps.findIndex(({ next }) => next?.id === panel);
  const step = at >= 0 ? at : last;
  const strides = review.strideReadings;
  const nth = Math.min(Math.floor(step / 2), strides.length - 1);
  return {
    step: review.stepReadings[step] ?? null,
    stride: step < 0 ? (strides[0] ?? null) : (strides[nth] ?? null),
  };
}

function told(rows: readonly (readonly [name: string, answer: Answer])[]): readonly StepRow[] {
  return rows.flatMap(([name, answer]) =>
    answer.kind === "value" ? [{ name, value: tellReading(answer) }] : [],
  );
}
