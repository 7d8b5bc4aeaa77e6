import type { InkPoint } from "../../../ink";

/** Panel units that a line may stray when points are left out: no eye finds a quarter of a pixel. */
const STRAY = 0.22;
/** Pressure may stray by this much, told in panel units so that one rule judges both. */
const UNITS_A_PRESSURE = 7;
/** Points further apart than this let the pen's outline go angular. */
const FARTHEST = 18;

/**
 * A line with the points left out that it does not need, ends kept.
 *
 * Units:   panel units
 * Source:  Douglas & Peucker (1973), doi 10.3138/FM57-6770-U75U-7727, with pressure as a third axis
 */
export function thin(points: readonly InkPoint[]): InkPoint[] {
  const keep = new Set<number>([0, points.length - 1]);
  const pending: [number, number][] = [[0, points.length - 1]];
  for (let span = pending.pop(); span !== undefined; span = pending.pop()) {
    const [from, to] = span;
    if (to - from < 2) continue;
    const { at, stray, apart } = farthest(points, from, to);
    if (stray <= STRAY && apart <= FARTHEST) continue;
    const split = stray > STRAY ? at : Math.round((from + to) / 2);
    keep.add(split);
    pending.push([from, split], [split, to]);
  }
  return points.filter((_, i) => keep.has(i));
}

function farthest(points: readonly InkPoint[], from: number, to: number) {
  const a = points[from];
  const b = points[to];
  if (a === undefined || b === undefined) return { at: from, stray: 0, apart: 0 };
  const apart = Math.hypot(b[0] - a[0], b[1] - a[1]);
  let at = from;
  let stray = 0;
  for (let i = from + 1; i < to; i += 1) {
    const point = points[i];
    const off = point === undefined ? 0 : offLine(point, a, b);
    if (off > stray) [at, stray] = [i, off];
  }
  return { at, stray, apart };
}

function offLine(point: InkPoint, a: InkPoint, b: InkPoint): number {
  const along = [b[0] - a[0], b[1] - a[1]] as const;
  const square = along[0] ** 2 + along[1] ** 2;
  const raw = (point[0] - a[0]) * along[0] + (point[1] - a[1]) * along[1];
  const share = square === 0 ? 0 : Math.min(1, Math.max(0, raw / square));
  const off = Math.hypot(point[0] - a[0] - along[0] * share, point[1] - a[1] - along[1] * share);
  const press = Math.abs(point[2] - a[2] - (b[2] - a[2]) * share) * UNITS_A_PRESSURE;
  return Math.max(off, press * 0.5);
}
