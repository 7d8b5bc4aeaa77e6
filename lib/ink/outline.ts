import { getStroke } from "perfect-freehand";
import type { InkPoint, Nib, Stroke } from "./stroke";

/** How a nib leaves its mark. */
interface NibLook {
  /** Full width at pressure 1, panel units: what a hand that picks this nib gets. */
  readonly width: number;
  /** How much of the width the pressure decides: 0 none, 1 all. */
  readonly thinning: number;
  /** How far the ends run thin, in widths. */
  readonly taper: number;
  /** How much of the paper it hides, 0..1. */
  readonly opacity: number;
}

/** Chosen by eye at zoom 1 on a 720 × 1200 view. */
export const NIB_LOOKS: Readonly<Record<Nib, NibLook>> = {
  fine: { width: 4, thinning: 0.6, taper: 2, opacity: 0.92 },
  broad: { width: 10, thinning: 0.7, taper: 1, opacity: 0.85 },
  under: { width: 16, thinning: 0.3, taper: 0.5, opacity: 0.35 },
};

/**
 * The outline that a stroke fills, as one closed polygon.
 *
 * Shapes:  points in, corners out in order, first not repeated; none for no points
 * Units:   panel units
 * @param lifted whether the pen has lifted: the far end of a stroke under way does not run thin yet
 */
export function outlineOf(
  { nib, width, points }: Pick<Stroke, "nib" | "width" | "points">,
  lifted = true,
): readonly (readonly [x: number, y: number])[] {
  const { thinning, taper } = NIB_LOOKS[nib];
  // The helper's size is the width at pressure ½; ours is the width at pressure 1.
  const size = width / (1 + thinning);
  const ends = points.length < 3 ? 0 : Math.min(taper * width, lengthOf(points) / 3);
  return getStroke(points as InkPoint[] as [number, number, number][], {
    size,
    thinning,
    smoothing: 0.5,
    streamline: 0.3,
    simulatePressure: false,
    start: { taper: ends },
    end: { taper: lifted ? ends : 0 },
    last: lifted,
  });
}

function lengthOf(points: readonly InkPoint[]): number {
  let length = 0;
  let last = points[0];
  for (const point of points) {
    if (last !== undefined) length += Math.hypot(point[0] - last[0], point[1] - last[1]);
    last = point;
  }
  return length;
}
