import type { Point } from "../../../geometry";

/** A closed outline, and the box it lies in so that most points are told apart without asking further. */
export interface Solid {
  readonly outline: readonly Point[];
  readonly box: {
    readonly left: number;
    readonly right: number;
    readonly low: number;
    readonly high: number;
  };
}

/** Corners nearer to each other than this are left out: a hiding edge need not be finer. Leg lengths. */
const COARSE = 0.016;

export function solidOf(fine: readonly Point[]): Solid {
  const outline = coarse(fine);
  const xs = outline.map(({ x }) => x);
  const ys = outline.map(({ y }) => y);
  const box = {
    left: Math.min(...xs),
    right: Math.max(...xs),
    low: Math.min(...ys),
    high: Math.max(...ys),
  };
  return { outline, box };
}

function coarse(fine: readonly Point[]): Point[] {
  const kept: Point[] = [];
  for (const corner of fine) {
    const last = kept.at(-1);
    if (last === undefined || Math.hypot(corner.x - last.x, corner.y - last.y) >= COARSE)
      kept.push(corner);
  }
  return kept;
}

/** Is the point inside? Counts the sides that a ray to the right crosses. */
export function inside({ x, y }: Point, { outline, box }: Solid): boolean {
  if (x < box.left || x > box.right || y < box.low || y > box.high) return false;
  let within = false;
  let before = outline.at(-1);
  for (const corner of outline) {
    if (before !== undefined && corner.y > y !== before.y > y) {
      const crossing = before.x + ((corner.x - before.x) * (y - before.y)) / (corner.y - before.y);
      if (x < crossing) within = !within;
    }
    before = corner;
  }
  return within;
}

/** Twice the area, above zero when the outline turns left (y up). */
export function turnOf(outline: readonly Point[]): number {
  let sum = 0;
  let before = outline.at(-1);
  for (const corner of outline) {
    if (before !== undefined) sum += before.x * corner.y - corner.x * before.y;
    before = corner;
  }
  return sum;
}
