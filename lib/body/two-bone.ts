import { distance, type Point } from "../geometry";
import { requireFinite, requirePositive } from "../require";

/**
 * Which side of the line from root to end the joint between lies on, y down: −1 for a knee that
 * points to the page's right under its hip, 1 for an elbow that points to the page's left.
 */
export type Bend = 1 | -1;

/** Two bones that share a joint, as thigh and shank share the knee. Lengths in one unit. */
export interface TwoBones {
  readonly upper: number;
  readonly lower: number;
  readonly bend: Bend;
}

/**
 * How far the two bones together may be stretched: a share of their length, so that a straight limb
 * still holds after rounding. 0.4 % of thigh and shank is below 0.5 % of a leg.
 */
const GIVE = 0.004;

/**
 * The joint between two bones that run from a root to an end: the knee between hip and ankle.
 * Lengths are kept; within `GIVE` beyond straight the joint lies on the line.
 *
 * Units:   any, one for all
 * Errors:  RangeError unless lengths are above zero and points finite; null when it is out of reach
 * Source:  the law of cosines
 *
 * @example
 * middleJoint({ x: 0, y: 0 }, { x: 0, y: 8 }, { upper: 5, lower: 5, bend: -1 }); // => { x: 3, y: 4 }
 */
export function middleJoint(
  root: Point,
  end: Point,
  { upper, lower, bend }: TwoBones,
): Point | null {
  requirePositive("middleJoint", { upper, lower });
  requireFinite("middleJoint", { rootX: root.x, rootY: root.y, endX: end.x, endY: end.y });
  const apart = distance(root, end);
  const give = GIVE * (upper + lower);
  if (apart > upper + lower + give || apart < Math.abs(upper - lower)) return null;
  if (apart === 0) return null; // equal bones folded flat: every direction would do
  const along = (upper ** 2 - lower ** 2 + apart ** 2) / (2 * apart);
  const aside = Math.sqrt(Math.max(0, upper ** 2 - along ** 2));
  // Past straight both bones give alike, instead of the lower one alone.
  const straight = apart >= upper + lower ? (apart * upper) / (upper + lower) : along;
  const unit = { x: (end.x - root.x) / apart, y: (end.y - root.y) / apart };
  return {
    x: root.x + unit.x * straight - unit.y * aside * bend,
    y: root.y + unit.y * straight + unit.x * aside * bend,
  };
}

/** A joint nearer to its line than this share of it does not say which way it bends. */
const STRAIGHT = 0.002;

/** Which way a limb is bent, or null while it is drawn straight. Units: any, one for all. */
export function bendOf(root: Point, middle: Point, end: Point): Bend | null {
  const way = { x: end.x - root.x, y: end.y - root.y };
  const area = way.x * (middle.y - root.y) - way.y * (middle.x - root.x);
  if (!(Math.abs(area) > STRAIGHT * (way.x ** 2 + way.y ** 2))) return null;
  return area > 0 ? 1 : -1;
}

/**
 * How far the end lies beyond the reach of both bones: 0 when they span it. Units: those given.
 */
export function beyondReach(
  root: Point,
  end: Point,
  { upper, lower }: Pick<TwoBones, "upper" | "lower">,
): number {
  return Math.max(0, distance(root, end) - (upper + lower));
}
