import type { MethodLimit, Unit } from "../../lib/gait";
import { methods as words } from "../_words";

const DEGREES = 180 / Math.PI;
const MINUS = "−";

/**
 * When a limit is broken, as a person reads it: "above 5 % of a leg", "outside 40 % to 70 %".
 *
 * Units:   those of the limit in; words out
 */
export function tellLimit({
  fires,
  value,
  unit,
}: Pick<MethodLimit, "fires" | "value" | "unit">): string {
  const { table } = words;
  if (typeof value === "number")
    return table[fires === "below" ? "below" : "above"](tell(value, unit));
  const [from, to] = value;
  if (from === -to) return table.beyondEither(tell(to, unit));
  return table.outside(number(from, unit), tell(to, unit));
}

/** How many captured steps, pairs or strides trip it. */
export function tellTrips(rate: number | null): string {
  if (rate === null) return words.table.uncounted;
  return rate === 0 ? words.table.none : `${plain(100 * rate, 1)} %`;
}

function tell(value: number, unit: Unit): string {
  const shown = number(value, unit);
  switch (unit) {
    case "leg":
      return words.unit.ofALeg(shown);
    case "leg/frame":
      return words.unit.ofALegAFrame(shown);
    case "share":
      return `${shown} %`;
    case "rad":
      return `${shown}°`;
    case "rad/frame":
      return words.unit.aFrame(`${shown}°`);
    case "frames":
    case "poses":
    case "times":
      return words.unit[unit](shown);
    case "seconds":
      return `${shown} s`;
    case "number":
      return shown;
    default:
      return `${shown} ${unit}`;
  }
}

/** The figure alone, in a person's unit. */
function number(value: number, unit: Unit): string {
  if (unit === "leg" || unit === "leg/frame" || unit === "share") return plain(100 * value, 2);
  if (unit === "rad" || unit === "rad/frame") return plain(value * DEGREES, 1);
  return plain(value, 2);
}

/** Without the noughts that say nothing. */
function plain(value: number, decimals: number): string {
  const shown = String(Number(Math.abs(value).toFixed(decimals)));
  return value < 0 && shown !== "0" ? `${MINUS}${shown}` : shown;
}
