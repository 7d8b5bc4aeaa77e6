import type { Reading } from "../gait";

/** "4.0 %" of a leg, "12°" for an angle, "3 frames": what a label on a drawing says. */
export function amountOf({ value, unit }: Reading): string {
  const size = Math.abs(value);
  switch (unit) {
    case "leg":
    case "share":
      return percent(size);
    case "leg/frame":
      return `${percent(size)} a frame`;
    case "rad":
      return degrees(size);
    case "rad/frame":
      return `${degrees(size)} a frame`;
    case "frames":
      return counted(size, "frame", "frames");
    case "poses":
      return counted(size, "pose", "poses");
    case "times":
      return `${rounded(size)}×`;
    case "seconds":
      return `${size.toFixed(2)} s`;
    case "steps/min":
      return `${size.toFixed(0)} steps/min`;
    case "number":
      return size.toFixed(2);
    default:
      return `${size.toFixed(2)} ${unit}`;
  }
}

const percent = (share: number): string => `${(100 * share).toFixed(1)} %`;
const degrees = (radians: number): string => `${((180 * radians) / Math.PI).toFixed(0)}°`;
const rounded = (size: number): string => `${Math.round(size * 10) / 10}`;

function counted(size: number, one: string, many: string): string {
  const text = rounded(size);
  return `${text} ${text === "1" ? one : many}`;
}
