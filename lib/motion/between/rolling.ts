import type { SidePoint } from "../../body";
import { FOOT_PARTS, type FootPart, type FootPoints, turnedBy } from "./foot-shape";

/** Where a foot's heel is, or would be, once the foot lies flat. Leg lengths. */
export type Footprint = SidePoint;

const SOLE: readonly FootPart[] = ["heel", "ball", "toe"];

/**
 * A foot rolled over the ground without slipping, as a stiff sole does: at any pitch it stands on its
 * lowest point, heel, ball or toe, and that point lies where it lies when the foot is flat.
 *
 * Units:   leg lengths; pitch in radians, toe up positive
 */
export function rolledFoot(local: FootPoints, pitch: number, print: Footprint): FootPoints {
  const turned = turnedFoot(local, pitch);
  const pivot = lowestOf(turned);
  if (pivot === null) return {};
  const { x, y } = pivot.point;
  const by = { x: print.x + stationOf(local, pivot.part) - x, y: print.y - y };
  return shiftedFoot(turned, by);
}

/** The footprint of a foot as it is drawn: the way back of `rolledFoot`. */
export function footprintOf(points: FootPoints, local: FootPoints): Footprint | null {
  const pivot = lowestOf(points);
  if (pivot === null) return null;
  return { x: pivot.point.x - stationOf(local, pivot.part), y: pivot.point.y };
}

export function turnedFoot(local: FootPoints, pitch: number): FootPoints {
  const turned: FootPoints = {};
  for (const part of FOOT_PARTS) {
    const point = local[part];
    if (point !== undefined) turned[part] = turnedBy(point, pitch);
  }
  return turned;
}

export function shiftedFoot(points: FootPoints, by: SidePoint): FootPoints {
  const moved: FootPoints = {};
  for (const part of FOOT_PARTS) {
    const point = points[part];
    if (point !== undefined) moved[part] = { x: point.x + by.x, y: point.y + by.y };
  }
  return moved;
}

/** The lowest point of the sole; of a foot without one, its ankle. */
export function lowestOf(points: FootPoints): { part: FootPart; point: SidePoint } | null {
  let low: { part: FootPart; point: SidePoint } | null = null;
  for (const part of SOLE) {
    const point = points[part];
    if (point !== undefined && (low === null || point.y < low.point.y)) low = { part, point };
  }
  if (low !== null) return low;
  return points.ankle === undefined ? null : { part: "ankle", point: points.ankle };
}

/** How far along the flat sole a part lies from its first. */
function stationOf(local: FootPoints, part: FootPart): number {
  let along = 0;
  let last: SidePoint | null = null;
  for (const one of SOLE) {
    const point = local[one];
    if (point === undefined) continue;
    if (last !== null) along += Math.hypot(point.x - last.x, point.y - last.y);
    last = point;
    if (one === part) return along;
  }
  return 0;
}
