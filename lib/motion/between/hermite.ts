/** A value at a moment, and how fast it changes there (a frame). */
export interface Knot {
  readonly at: number;
  readonly value: number;
  readonly slope: number;
}

/** A value at a moment. */
export interface Told {
  readonly at: number;
  readonly value: number;
}

/** How fast a value changes at a moment, told by its neighbours; null where there is none. */
export type SlopeOf = (before: Told | null, here: Told, after: Told | null) => number;

/** The cubic through two knots, with their slopes. Of knots at one moment it is the later one's value. */
export function hermite(from: Knot, to: Knot, at: number): number {
  const frames = to.at - from.at;
  if (!(frames > 0)) return to.value;
  const s = (at - from.at) / frames;
  const t = 1 - s;
  const ends = t * t * (1 + 2 * s) * from.value + s * s * (3 - 2 * s) * to.value;
  return ends + s * t * frames * (t * from.slope - s * to.slope);
}

/**
 * The slope of the parabola through three values at the middle one: what a Catmull-Rom spline whose knots
 * are unevenly spaced has there. With one neighbour, the slope of the line to it; with none, 0.
 *
 * Source:  Catmull & Rom (1974), A class of local interpolating splines; the knots are moments
 */
export function parabolaSlope(before: Told | null, here: Told, after: Told | null): number {
  const back = before === null ? null : slope(before, here);
  const ahead = after === null ? null : slope(here, after);
  if (before === null || back === null) return ahead ?? 0;
  if (after === null || ahead === null) return back;
  const [past, rest] = [here.at - before.at, after.at - here.at];
  return (back * rest + ahead * past) / (past + rest);
}

/**
 * The mean of the slopes to both neighbours: less carried away by a neighbour that is near in time than the
 * parabola. With one neighbour, the slope of the line to it; with none, 0.
 */
export function meanSlope(before: Told | null, here: Told, after: Told | null): number {
  const back = before === null ? null : slope(before, here);
  const ahead = after === null ? null : slope(here, after);
  if (back === null || ahead === null) return back ?? ahead ?? 0;
  return (back + ahead) / 2;
}

/**
 * A slope that never lets the curve pass beyond its values: 0 at a turn, else the weighted harmonic mean.
 *
 * Source:  Fritsch & Butland (1984), SIAM J Sci Stat Comput 5:300
 */
export function monotoneSlope(before: Told | null, here: Told, after: Told | null): number {
  const back = before === null ? null : slope(before, here);
  const ahead = after === null ? null : slope(here, after);
  if (before === null || back === null) return ahead ?? 0;
  if (after === null || ahead === null) return back;
  if (back * ahead <= 0) return 0;
  const [past, rest] = [here.at - before.at, after.at - here.at];
  const [one, other] = [2 * rest + past, rest + 2 * past];
  return (one + other) / (one / back + other / ahead);
}

/** Null of two values at one moment, which have no slope. */
function slope(from: Told, to: Told): number | null {
  return to.at > from.at ? (to.value - from.value) / (to.at - from.at) : null;
}
