import type { Nib, Stroke } from "../../lib/ink";

/** The under-drawing's own floor: far below the pencils', so that it lies beneath whatever comes. */
const UNDER_FLOOR = -1_000_000;

/**
 * Where a new stroke goes in the order of drawing: above the others of its kind. The soft blue
 * under-drawing lies beneath every pencil line, whenever it was drawn, on screen and in print alike.
 */
export function nextZ(ink: readonly Pick<Stroke, "nib" | "z">[], nib: Nib): number {
  const under = nib === "under";
  let top = under ? UNDER_FLOOR : 0;
  for (const stroke of ink) {
    if ((stroke.nib === "under") === under) top = Math.max(top, stroke.z);
  }
  return top + 1;
}
