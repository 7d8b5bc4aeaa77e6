import { requireFinite } from "../require";
import type { InkPoint, Stroke } from "./stroke";

/** Ink is kept to a sixteenth of a panel unit: a sixteenth of a pixel at zoom 1. */
export const STEPS_A_UNIT = 16;
/** Pressure is kept in 6 bits; digitisers report more, no outline shows it. */
export const PRESSURE_STEPS = 63;
/** Ink further out than this many steps is brought to the edge (±131,071 panel units). */
export const MAX_STEP = 131_071 * STEPS_A_UNIT;

/** Panel units to whole steps. Errors: RangeError unless finite. */
export function toSteps(units: number): number {
  requireFinite("ink", { coordinate: units });
  const steps = Math.round(units * STEPS_A_UNIT);
  return Math.min(MAX_STEP, Math.max(-MAX_STEP, steps)) + 0; // + 0: never −0
}

/** Pressure 0..1 to 0..63; what lies outside is brought in. Errors: RangeError unless finite. */
export function toPressureSteps(pressure: number): number {
  requireFinite("ink", { pressure });
  return Math.round(Math.min(1, Math.max(0, pressure)) * PRESSURE_STEPS) + 0;
}

/** A point as it will be read back: what is left of it after the codec. */
export function quantisePoint([x, y, pressure]: InkPoint): InkPoint {
  return [
    toSteps(x) / STEPS_A_UNIT,
    toSteps(y) / STEPS_A_UNIT,
    toPressureSteps(pressure) / PRESSURE_STEPS,
  ];
}

/** A stroke as it will be read back. Packing and unpacking gives exactly this. */
export function quantiseStroke(stroke: Stroke): Stroke {
  return {
    ...stroke,
    width: toSteps(stroke.width) / STEPS_A_UNIT,
    points: stroke.points.map(quantisePoint),
  };
}
