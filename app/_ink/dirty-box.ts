import { type Bounds, boundsOf, type InkPoint } from "../../lib/ink";

/** A stroke whose points are added at the end while it is drawn. */
export interface GrowingStroke {
  readonly width: number;
  readonly points: readonly InkPoint[];
}

/** New points bend the outline back this far: streamlining and the end's cap reach a few points. */
const POINTS_THAT_BEND = 8;
/** The taper at the start grows with the stroke's length while it is this short. */
const POINTS_OF_A_START = 24;

/**
 * Where a growing stroke looks other than when `painted` of its points were there; null where it
 * looks the same.
 *
 * Units:   panel units
 */
export function dirtyBox(stroke: GrowingStroke, painted: number): Bounds | null {
  const { points, width } = stroke;
  if (points.length === painted) return null;
  const from = painted < POINTS_OF_A_START ? 0 : painted - POINTS_THAT_BEND;
  return boundsOf({ points: points.slice(from), width });
}
