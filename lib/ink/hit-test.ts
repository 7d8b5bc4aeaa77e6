import type { Point } from "../geometry";
import { type Bounds, boundsOf } from "./bounds";
import type { InkPoint, Stroke } from "./stroke";

/** One move of the rubber: a round tip of this radius, drawn from one point to the next. */
export interface Rub {
  readonly from: Point;
  readonly to: Point;
  readonly radius: number;
}

/**
 * Whether the rubber touches the stroke's ink at full width.
 *
 * Units:   panel units
 * @param bounds the stroke's `boundsOf`, where the caller kept it: most strokes need no closer look
 */
export function touchesStroke(
  stroke: Pick<Stroke, "points" | "width">,
  rub: Rub,
  bounds: Bounds = boundsOf(stroke),
): boolean {
  const { from, to, radius } = rub;
  const apart =
    Math.max(from.x, to.x) + radius < bounds.left ||
    Math.min(from.x, to.x) - radius > bounds.right ||
    Math.max(from.y, to.y) + radius < bounds.top ||
    Math.min(from.y, to.y) - radius > bounds.bottom;
  if (apart) return false;
  const reach = (radius + stroke.width / 2) ** 2;
  let last: InkPoint | undefined;
  for (const point of stroke.points) {
    const [x, y] = point;
    const [lastX, lastY] = last ?? point;
    if (squaredGap({ x: lastX, y: lastY }, { x, y }, from, to) <= reach) return true;
    last = point;
  }
  return false;
}

/** The squared distance between two segments. Segments that cross have none. */
function squaredGap(a: Point, b: Point, c: Point, d: Point): number {
  if (cross(a, b, c, d)) return 0;
  return Math.min(
    squaredToSegment(a, c, d),
    squaredToSegment(b, c, d),
    squaredToSegment(c, a, b),
    squaredToSegment(d, a, b),
  );
}

function squaredToSegment(p: Point, a: Point, b: Point): number {
  const dx = b.x - a.x;
  const dy = b.y - a.y;
  const length = dx * dx + dy * dy;
  const along = length === 0 ? 0 : ((p.x - a.x) * dx + (p.y - a.y) * dy) / length;
  const t = Math.min(1, Math.max(0, along));
  return (p.x - a.x - t * dx) ** 2 + (p.y - a.y - t * dy) ** 2;
}

/** Whether the segments properly cross: the ends of each lie on opposite sides of the other. */
function cross(a: Point, b: Point, c: Point, d: Point): boolean {
  return turn(a, b, c) * turn(a, b, d) < 0 && turn(c, d, a) * turn(c, d, b) < 0;
}

/** Twice the signed area of a triangle. */
function turn(a: Point, b: Point, c: Point): number {
  return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
}
