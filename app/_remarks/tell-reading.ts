import type { PanelReading, Reading } from "../../lib/gait";
import { remarks } from "../_words";

const DEGREES = 180 / Math.PI;
const MINUS = "−"; // as wide as a figure, where a hyphen is not

/**
 * A reading in a person's units: leg lengths in two decimals, three where it is known that well;
 * angles in degrees; shares of a leg or a step in percent.
 *
 * Units:   those of the reading in; words out
 */
export function tellReading({ value, plusMinus, unit }: Reading): string {
  switch (unit) {
    case "leg":
    case "leg/frame":
      return `${withSlack(value, plusMinus, plusMinus > 0 && plusMinus < 0.005 ? 3 : 2)} ${unit}`;
    case "leg/s":
      return `${withSlack(value, plusMinus, 2)} leg/s`;
    case "m/s":
      return `${withSlack(value, plusMinus, 2)} m/s`;
    case "seconds":
      return `${withSlack(value, plusMinus, 2)} s`;
    case "steps/min":
      return `${withSlack(value, plusMinus, 0)} steps/min`;
    case "m/(step/min)":
      return `${withSlack(value, plusMinus, 4)} m per step/min`;
    case "number":
      return withSlack(value, plusMinus, 2);
    case "times":
      return `${withSlack(value, plusMinus, 0)} ${value === 1 ? "time" : "times"}`;
    case "rad":
      return tellDegrees(value, plusMinus);
    case "rad/frame":
      return `${tellDegrees(value, plusMinus)} a frame`;
    case "share":
      return `${withSlack(100 * value, 100 * plusMinus, 0)} %`;
    case "poses":
      return `${withSlack(value, plusMinus, 0)} ${value === 1 ? "pose" : "poses"}`;
    case "frames":
      return `${withSlack(value, plusMinus, Number.isInteger(value) ? 0 : 1)} ${value === 1 ? "frame" : "frames"}`;
  }
}

/**
 * A remark's number as its sentence has it: distances as a share of a leg, with their sign.
 *
 * Units:   those of the reading in; words out
 */
export function tellMeasure(reading: Reading): string {
  if (reading.unit !== "leg") return tellReading(reading);
  const { value, plusMinus } = reading;
  return remarks.ofALeg(withSlack(100 * value, 100 * plusMinus, 1));
}

/** An angle in degrees, to a tenth where it is known to half a degree. Units: radians in. */
function tellDegrees(value: number, plusMinus: number): string {
  const slack = plusMinus * DEGREES;
  return `${withSlack(value * DEGREES, slack, slack > 0 && slack < 0.5 ? 1 : 0)}°`;
}

/** One row of the readings: the value in words, or null where it cannot be told. */
export function tellPanelReading({ id, answer }: PanelReading): string | null {
  if (answer.kind === "cannot-tell") return null;
  if (answer.kind === "yes-no") return answer.value ? remarks.readings.yes : remarks.readings.no;
  const { value, plusMinus } = answer;
  const size = () => tellDegrees(Math.abs(value), plusMinus);
  if (id === "foot-pitch" && isBeyondSlack(value)) {
    return `${size()} ${toeWay(value, plusMinus)}`;
  }
  if (id === "knee-bend" && value < 0 && isBeyondSlack(value)) {
    return `${size()} ${remarks.readings.kneeBack}`;
  }
  return tellReading(answer);
}

/** An angle that is smaller than its ± does not say which way it goes. */
function toeWay(value: number, plusMinus: number): string {
  if (Math.abs(value) <= plusMinus) return remarks.readings.toeEither;
  return value > 0 ? remarks.readings.toeUp : remarks.readings.toeDown;
}

/** Whether the angle is at least the half degree that shows as one. */
const isBeyondSlack = (value: number): boolean => Math.abs(value) * DEGREES >= 0.5;

/** "0.93 ± 0.01". What is not 0 never reads as ± 0: it is at least one of the last figure. */
function withSlack(value: number, plusMinus: number, decimals: number): string {
  const shown = signed(value, decimals);
  if (!(plusMinus > 0)) return shown;
  const least = 10 ** -decimals;
  return `${shown} ± ${Math.max(plusMinus, least).toFixed(decimals)}`;
}

function signed(value: number, decimals: number): string {
  const digits = Math.abs(value).toFixed(decimals);
  return value < 0 && Number(digits) !== 0 ? `${MINUS}${digits}` : digits;
}
