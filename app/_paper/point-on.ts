import { PANEL } from "../../lib/body";
import type { Point } from "../../lib/geometry";

/** Where a pointer is on a paper. Units: CSS pixels of the window → panel units, y down. */
export function pointOn(
  { clientX, clientY }: Pick<PointerEvent, "clientX" | "clientY">,
  paper: Element,
): Point {
  const { left, top, width } = paper.getBoundingClientRect();
  const units = PANEL.width / width;
  return { x: (clientX - left) * units, y: (clientY - top) * units };
}

/** The places a pointer passed since it was last heard of: a quick pen is heard of once a frame. */
export function passedBy(event: PointerEvent): readonly PointerEvent[] {
  const coalesced = event.getCoalescedEvents();
  return coalesced.length === 0 ? [event] : coalesced;
}
