import type { Point } from "../../geometry";
import { hermite, monotoneSlope, parabolaSlope, type SlopeOf } from "../../motion";

/** Where something passes, and at which frame. Units: panel units. */
export interface Passed extends Point {
  readonly at: number;
}

/** What an arc goes through: it is drawn between the middle two; the others, where known, tell how it bends. */
type Way = readonly [before: Passed | null, from: Passed, to: Passed, after: Passed | null];

const PIECES = 12; // straight ones that look like an arc; even, so that one end is its middle

/**
 * The arc that a point goes on from one pose to the next, as the in-betweens have it: ahead by a spline through
 * the poses, in height without passing beyond them.
 *
 * Units:   panel units
 */
export function arcBetween(way: Way): readonly Point[] {
  const [, from, to] = way;
  const x = cubic(way, "x", parabolaSlope);
  const y = cubic(way, "y", monotoneSlope);
  return Array.from({ length: PIECES + 1 }, (_, piece) => {
    const at = from.at + ((to.at - from.at) * piece) / PIECES;
    return piece === 0 ? { x: from.x, y: from.y } : { x: x(at), y: y(at) };
  });
}

function cubic([before, from, to, after]: Way, of: "x" | "y", slopeOf: SlopeOf) {
  const told = (one: Passed) => ({ at: one.at, value: one[of] });
  const [first, last] = [before, after].map((one) => (one === null ? null : told(one)));
  const start = { ...told(from), slope: slopeOf(first ?? null, told(from), told(to)) };
  const end = { ...told(to), slope: slopeOf(told(from), told(to), last ?? null) };
  return (at: number) => hermite(start, end, at);
}
