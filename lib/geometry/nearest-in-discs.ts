import { distance } from "./distance";
import type { Point } from "./point";

/** All points that lie no farther than this from a centre. */
export interface Disc extends Point {
  readonly radius: number;
}

/** What rounding may leave, as a share of a radius. */
const TINY = 1e-9;

/**
 * The point nearest to a wish that lies within one disc or within two at once: the wish itself where it
 * does, else a point of a rim, else where the two rims cross. Of discs that do not meet, a point between
 * them.
 *
 * Units:   any, one for all
 *
 * @example
 * nearestInDiscs({ x: 9, y: 0 }, [{ x: 0, y: 0, radius: 5 }]); // => { x: 5, y: 0 }
 * nearestInDiscs({ x: 4, y: 9 }, [{ x: 0, y: 0, radius: 5 }, { x: 8, y: 0, radius: 5 }]); // => { x: 4, y: 3 }
 */
export function nearestInDiscs(wish: Point, discs: readonly Disc[]): Point {
  const within = (point: Point) =>
    discs.every((disc) => distance(point, disc) <= disc.radius * (1 + TINY));
  if (within(wish)) return wish;
  const onRims = discs.map((disc) => onRim(wish, disc)).filter(within);
  const [first, second] = discs;
  const crossings = first === undefined || second === undefined ? [] : rimsCross(first, second);
  const [nearest] = [...onRims, ...crossings].toSorted(
    (a, b) => distance(wish, a) - distance(wish, b),
  );
  return nearest ?? wish;
}

function onRim(wish: Point, { x, y, radius }: Disc): Point {
  const far = distance(wish, { x, y });
  if (far === 0) return wish;
  return { x: x + ((wish.x - x) * radius) / far, y: y + ((wish.y - y) * radius) / far };
}

/** Where two rims cross; of discs apart, the point between them; none of discs within each other. */
function rimsCross(one: Disc, other: Disc): Point[] {
  const apart = distance(one, other);
  if (apart === 0 || apart < Math.abs(one.radius - other.radius)) return [];
  const along = (one.radius ** 2 - other.radius ** 2 + apart ** 2) / (2 * apart);
  const aside = Math.sqrt(Math.max(0, one.radius ** 2 - along ** 2));
  const unit = { x: (other.x - one.x) / apart, y: (other.y - one.y) / apart };
  return [aside, -aside].map((by) => ({
    x: one.x + unit.x * along - unit.y * by,
    y: one.y + unit.y * along + unit.x * by,
  }));
}
