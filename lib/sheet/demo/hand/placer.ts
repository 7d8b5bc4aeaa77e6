import type { Point } from "../../../geometry";
import { add, times, unit } from "./vector";

/** A point told as so far ahead of (or aside from), up from, and out from somewhere. Leg lengths. */
export type Spot = readonly [ahead: number, up: number, out?: number];

/**
 * Points of a line about some place: as spots, or written down as "ahead,up ahead,up,out …" in
 * thousandths of a leg, the way a drawing is tabled.
 */
export type Knots = string | readonly Spot[];

/** Puts what was told about a part of the body where that part is, as it is turned. Leg lengths. */
export type Placer = (ahead: number, up: number, out?: number) => Point;

/** A placer about an origin; `up` tells which way up is there. `ahead` lies a quarter turn right of it. */
export function placerAt(origin: Point, up: Point): Placer {
  const u = unit(up);
  const ahead = { x: u.y, y: -u.x };
  return (forward, high) => add(origin, add(times(ahead, forward), times(u, high)));
}

/** Puts a whole list of knots down. Errors: RangeError for a table that is not of numbers. */
export function placed(place: Placer, knots: Knots): Point[] {
  const spots = typeof knots === "string" ? spotsIn(knots) : knots;
  return spots.map(([ahead, up, out]) => place(ahead, up, out));
}

function spotsIn(table: string): Spot[] {
  return table.split(" ").map((entry) => {
    const [ahead = Number.NaN, up = Number.NaN, out] = entry
      .split(",")
      .map((word) => Number(word) / 1000);
    if (!Number.isFinite(ahead) || !Number.isFinite(up)) {
      throw new RangeError(`knots need numbers "ahead,up", got "${entry}"`);
    }
    return out === undefined ? [ahead, up] : [ahead, up, out];
  });
}
