/** What a mouse or a finger presses with, since it cannot say. */
export const RESTING_PRESSURE = 0.55;

const LIGHTEST = 0.32;
const SPEED_TO_LIGHTNESS = 0.085; // pressure lost for each CSS pixel a millisecond
const INERTIA = 0.82; // share of the pressure before that is kept, so that a line swells gently

/**
 * The pressure of a hand without a pen: a quick line is a lighter one, by little.
 *
 * Units:   CSS pixels, milliseconds → 0..1
 */
export function handPressure(before: number, movedPx: number, elapsedMs: number): number {
  const speed = movedPx / Math.max(1, elapsedMs);
  const wanted = Math.max(LIGHTEST, RESTING_PRESSURE - SPEED_TO_LIGHTNESS * speed);
  return INERTIA * before + (1 - INERTIA) * wanted;
}
