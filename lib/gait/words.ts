import type { Side } from "../body";
import type { Reading } from "./finding";

/** A reading in leg lengths as a person reads it: "2.0 ± 0.6 %", or "2.0 %" when it is exact. */
export function percent({ value, plusMinus }: Pick<Reading, "value" | "plusMinus">): string {
  const shown = (100 * Math.abs(value)).toFixed(1);
  return plusMinus > 0 ? `${shown} ± ${(100 * plusMinus).toFixed(1)} %` : `${shown} %`;
}

/** "1 frame", "2 frames". */
export function framesInWords(count: number): string {
  return `${count} ${count === 1 ? "frame" : "frames"}`;
}

/** "right down", or "down" while nobody said whose. */
export function sided(side: Side | null, what: string): string {
  return side === null ? what : `${side} ${what}`;
}

/** "a", "a and b", "a, b and c". */
export function listed(items: readonly string[]): string {
  const last = items.at(-1) ?? "";
  return items.length < 2 ? last : `${items.slice(0, -1).join(", ")} and ${last}`;
}

/** A sentence begins with a capital. */
export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** An angle as a person reads it: "12 ± 2°", or "12°" when it is exact. Units: radians in. */
export function degrees({ value, plusMinus }: Pick<Reading, "value" | "plusMinus">): string {
  const inDegrees = (angle: number) => ((180 * angle) / Math.PI).toFixed(0);
  const shown = inDegrees(Math.abs(value));
  return plusMinus > 0 ? `${shown} ± ${inDegrees(plusMinus)}°` : `${shown}°`;
}
