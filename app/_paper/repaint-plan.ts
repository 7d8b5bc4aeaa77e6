import type { Bounds, Stroke } from "../../lib/ink";
import { boxOf } from "./box";
import { strokeBounds } from "./stroke-bounds";

/** What has to be painted when a view's strokes become other ones. */
export type RepaintPlan<S> =
  | { readonly kind: "none" }
  /** Only these are new, and they lie on top. */
  | { readonly kind: "append"; readonly strokes: readonly S[] }
  /** What lies in this box is painted again. Units: panel units. */
  | { readonly kind: "box"; readonly box: Bounds }
  | { readonly kind: "whole" };

/**
 * The least painting that turns one list of strokes into another. Strokes are told apart by
 * identity: a stroke nobody touched is the same object.
 */
export function repaintPlan<S extends Pick<Stroke, "points" | "width">>(
  before: readonly S[],
  after: readonly S[],
): RepaintPlan<S> {
  if (before === after) return { kind: "none" };
  if (before.every((stroke, index) => stroke === after[index])) {
    const strokes = after.slice(before.length);
    return strokes.length === 0 ? { kind: "none" } : { kind: "append", strokes };
  }
  const had = new Set(before);
  const has = new Set(after);
  const stayed = before.filter((stroke) => has.has(stroke));
  const kept = after.filter((stroke) => had.has(stroke));
  if (stayed.some((stroke, index) => stroke !== kept[index])) return { kind: "whole" };
  const changed = [
    ...before.filter((stroke) => !has.has(stroke)),
    ...after.filter((stroke) => !had.has(stroke)),
  ];
  const box = boxOf(changed.map(strokeBounds));
  return box === null ? { kind: "none" } : { kind: "box", box };
}
