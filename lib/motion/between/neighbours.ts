import { hermite, type Knot, type SlopeOf, type Told } from "./hermite";
import type { MotionKey } from "./motion-key";

/** Two poses that follow each other, and those around them, which say how fast things go there. */
export interface Neighbours {
  readonly before: MotionKey | null;
  readonly from: MotionKey;
  readonly to: MotionKey;
  readonly after: MotionKey | null;
}

/** A value that a pose has, or lacks. */
export type ValueOf = (key: MotionKey) => number | null;

/**
 * A value from one pose to the next, with a slope at each that its neighbours tell. Null where one of the
 * two lacks it. A pose that is held stands still meanwhile, so there the slope is 0.
 */
export function curveBetween(
  { before, from, to, after }: Neighbours,
  read: ValueOf,
  slopeOf: SlopeOf,
): ((at: number) => number) | null {
  const start = told(from, from.until, read);
  const end = told(to, to.frame, read);
  if (start === null || end === null) return null;
  const past = before === null ? null : told(before, before.until, read);
  const next = after === null ? null : told(after, after.frame, read);
  const knots: [Knot, Knot] = [
    { ...start, slope: from.until > from.frame ? 0 : slopeOf(past, start, end) },
    { ...end, slope: to.until > to.frame ? 0 : slopeOf(start, end, next) },
  ];
  return (at) => hermite(knots[0], knots[1], at);
}

function told(key: MotionKey, at: number, read: ValueOf): Told | null {
  const value = read(key);
  return value === null || !Number.isFinite(value) ? null : { at, value };
}
