import { type Bounds, boundsOf, type Stroke } from "../../lib/ink";

const kept = new WeakMap<Pick<Stroke, "points" | "width">, Bounds>();

/** The box round a finished stroke, kept with it. Units: panel units. */
export function strokeBounds(stroke: Pick<Stroke, "points" | "width">): Bounds {
  const known = kept.get(stroke);
  if (known !== undefined) return known;
  const bounds = boundsOf(stroke);
  kept.set(stroke, bounds);
  return bounds;
}
