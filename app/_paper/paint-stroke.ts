import type { InkColour, Stroke } from "../../lib/ink";
import { NIB_LOOKS } from "../../lib/ink";
import { grained } from "./grain";
import { strokePath } from "./stroke-path";

/** What painting a stroke needs to know of it. */
export type PaintedStroke = Pick<Stroke, "nib" | "width" | "points" | "colour">;

/** A pencil line this thin, in device pixels, is still seen; a thinner one turns into mist. */
const LEAST_LINE_PX = 1.15;

/**
 * How much a line is widened so that a small paper still shows it. The ink itself stays as drawn.
 *
 * Units:   panel units; `scale` is device pixels a unit
 */
export function extraWidth(width: number, scale: number): number {
  return Math.max(0, LEAST_LINE_PX / scale - width * 0.6);
}

/**
 * Paints one stroke. The context is scaled so that a panel unit is its unit.
 *
 * @param share how much of its strength it has: 1, or less for what is being rubbed out
 */
export function paintStroke(
  context: CanvasRenderingContext2D,
  stroke: PaintedStroke,
  scale: number,
  share = 1,
): void {
  paintPath(context, strokePath(stroke), stroke, { scale, share });
}

/** Paints a path as a stroke's ink. Units: as `paintStroke`. */
export function paintPath(
  context: CanvasRenderingContext2D,
  path: Path2D,
  { nib, colour, width }: { nib: Stroke["nib"]; colour: InkColour; width: number },
  { scale, share }: { scale: number; share: number },
): void {
  const extra = extraWidth(width, scale);
  context.globalAlpha = NIB_LOOKS[nib].opacity * share;
  context.fillStyle = grained(context, colour, scale);
  context.fill(path);
  if (extra > 0) {
    context.strokeStyle = context.fillStyle;
    context.lineWidth = extra;
    context.stroke(path);
  }
  context.globalAlpha = 1;
}
