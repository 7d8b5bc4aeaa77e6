import { insidePolygon, type Point } from "../geometry";
import type { Stroke } from "./stroke";

/**
 * The strokes that an outline gathers: those with at least half of their points within it, so that a
 * line which only sticks out, or only reaches in, is taken for what it mostly is.
 *
 * Units:   panel units
 */
export function gatherStrokes<S extends Pick<Stroke, "points">>(
  strokes: readonly S[],
  outline: readonly Point[],
): readonly S[] {
  return strokes.filter(({ points }) => {
    const within = points.filter(([x, y]) => insidePolygon({ x, y }, outline)).length;
    return within > 0 && 2 * within >= points.length;
  });
}
