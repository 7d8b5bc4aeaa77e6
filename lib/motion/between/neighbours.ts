import { hermite, type Knot, type SlopeOf, type Told } from "./hermite";
import type { MotionKey } from "./motion-key";

/** Two poses that follow each other, and those around them, which say how fast things go there. */
export interface Neighbours {
  /** The pose before `before`, where that is too near to tell a speed. */
  readonly earlier: MotionKey | null;
  readonly before: MotionKey | null;
  readonly from: MotionKey;
  readonly to: MotionKey;
  readonly after: MotionKey | null;
  /** The pose after `after`, likewise. */
  readonly later: MotionKey | null;
}

/** A value that a pose has, or lacks. */
export type ValueOf = (key: MotionKey) => number | null;

/** How the slopes of a curve are told. */
interface Slopes {
  readonly slopeOf: SlopeOf;
  /** Whether a pose that is very near in time is passed over. */
  readonly steady?: boolean;
}

/**
 * A neighbour nearer in time than this share of the gap on the other side tells no speed: whatever its
 * value is off by would be told ten times over. It is then the pose behind it that tells.
 * Source: 28 steps of six captured walks. Any share from 0.05 to 0.1 leaves the same worst case; of the trunk
 * it is 2.4 % of a leg, and 3.4 % where the nearest pose always tells
 */
const TOO_NEAR = 0.1;

/**
 * Two poses and those around them. What is not asked is left out, so that it may change.
 *
 * @param back the two before them, in order of time
 * @param ahead the two after them
 */
export function neighboursOf(
  { from, to }: { readonly from: MotionKey; readonly to: MotionKey },
  [earlier = null, before = null]: readonly (MotionKey | null)[],
  [after = null, later = null]: readonly (MotionKey | null)[],
): Neighbours {
  const frames = to.frame - from.until;
  const crowds = (gap: number | null) => gap !== null && gap < TOO_NEAR * frames;
  return {
    earlier: crowds(before && from.until - before.until) ? earlier : null,
    before,
    from,
    to,
    after,
    later: crowds(after && after.frame - to.frame) ? later : null,
  };
}

/**
 * A value from one pose to the next, with a slope at each that its neighbours tell. Null where one of the
 * two lacks it. A pose that is held stands still meanwhile, so there the slope is 0; at a pose that has
 * nothing beyond it the curve runs out straight.
 */
export function curveBetween(
  { earlier, before, from, to, after, later }: Neighbours,
  read: ValueOf,
  { slopeOf, steady = false }: Slopes,
): ((at: number) => number) | null {
  const start = told(from, from.until, read);
  const end = told(to, to.frame, read);
  if (start === null || end === null) return null;
  const past = told(before, before?.until, read);
  const next = told(after, after?.frame, read);
  const slopeAt = (back: Side, here: Told, ahead: Side): number =>
    steady
      ? slopeOf(steadied(back, here, ahead[0]), here, steadied(ahead, here, back[0]))
      : slopeOf(back[0], here, ahead[0]);
  const first = slopeAt([past, told(earlier, earlier?.until, read)], start, [end, next]);
  const last = slopeAt([start, past], end, [next, told(later, later?.frame, read)]);
  const fromIsHeld = from.until > from.frame;
  const toIsHeld = to.until > to.frame;
  const line = (end.value - start.value) / (end.at - start.at);
  const runOut = (other: number) => (3 * line - other) / 2; // no bend at the end
  const opens = past === null && !fromIsHeld && next !== null;
  const closes = next === null && !toIsHeld && past !== null;
  const knots: [Knot, Knot] = [
    { ...start, slope: fromIsHeld ? 0 : opens ? runOut(toIsHeld ? 0 : last) : first },
    { ...end, slope: toIsHeld ? 0 : closes ? runOut(fromIsHeld ? 0 : first) : last },
  ];
  return (at) => hermite(knots[0], knots[1], at);
}

/** What stands on one side of a pose: the nearest, and the one behind it. */
type Side = readonly [nearest: Told | null, behind: Told | null];

/** The one of a side that tells a speed, by how near the other side's nearest is. */
export function steadied([nearest, behind]: Side, here: Told, other: Told | null): Told | null {
  if (nearest === null || behind === null || other === null) return nearest;
  const isTooNear = Math.abs(nearest.at - here.at) < TOO_NEAR * Math.abs(other.at - here.at);
  return isTooNear ? behind : nearest;
}

function told(key: MotionKey | null, at: number | undefined, read: ValueOf): Told | null {
  if (key === null || at === undefined) return null;
  const value = read(key);
  return value === null || !Number.isFinite(value) ? null : { at, value };
}
