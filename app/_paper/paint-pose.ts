import { bonesOf } from "../../lib/body";
import { PALETTE, sideColour } from "../../lib/export";
import type { View } from "../../lib/geometry";
import type { Panel } from "../../lib/sheet";
import { paintStroke } from "./paint-stroke";

const LIMB_UNITS = 9; // panel units: a limb that stands in for a drawing is as bold as a pencil line

/**
 * Paints a pose as it is played or shown small: its ink, or, while nothing is drawn, the limbs between
 * its marks. The context is scaled so that a panel unit is its unit.
 *
 * Units:   `scale` is device pixels a panel unit
 */
export function paintPose(
  context: CanvasRenderingContext2D,
  panel: Pick<Panel, "ink" | "marks">,
  view: View,
  scale: number,
): void {
  const ink = panel.ink[view];
  for (const stroke of ink) paintStroke(context, stroke, scale);
  if (ink.length > 0) return;
  context.lineCap = "round";
  context.lineJoin = "round";
  context.lineWidth = Math.max(LIMB_UNITS, 1.4 / scale);
  for (const { start, end, side } of bonesOf(panel.marks[view])) {
    context.strokeStyle = side === null ? PALETTE.graphite : sideColour(side);
    context.beginPath();
    context.moveTo(start.x, start.y);
    context.lineTo(end.x, end.y);
    context.stroke();
  }
}
