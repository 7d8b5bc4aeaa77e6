import type { Stroke } from "./stroke";

/** A box round ink, in panel units, y down. */
export interface Bounds {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** The box round a stroke, its width included. Errors: none; without points it is empty (∞..−∞). */
export function boundsOf({ points, width }: Pick<Stroke, "points" | "width">): Bounds {
  let left = Number.POSITIVE_INFINITY;
  let top = Number.POSITIVE_INFINITY;
  let right = Number.NEGATIVE_INFINITY;
  let bottom = Number.NEGATIVE_INFINITY;
  for (const [x, y] of points) {
    left = Math.min(left, x);
    top = Math.min(top, y);
    right = Math.max(right, x);
    bottom = Math.max(bottom, y);
  }
  const half = width / 2;
  return { left: left - half, top: top - half, right: right + half, bottom: bottom + half };
}
