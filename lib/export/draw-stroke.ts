import { NIB_LOOKS, outlineOf, type Stroke } from "../ink";
import { inkColour } from "./palette";
import type { Surface } from "./surface";

/**
 * Draws one stroke's ink.
 *
 * Units:   panel units
 * @param lifted whether the pen has lifted (see `outlineOf`)
 */
export function drawStroke(
  surface: Surface,
  stroke: Pick<Stroke, "nib" | "width" | "points" | "colour">,
  lifted = true,
): void {
  surface.save();
  surface.globalAlpha *= NIB_LOOKS[stroke.nib].opacity;
  surface.fillStyle = inkColour(stroke.colour);
  fillOutline(surface, outlineOf(stroke, lifted));
  surface.restore();
}

const MIN_OUTLINE_POINTS = 3; // fewer enclose nothing

/** Fills a closed outline, rounded off: curves through the middles of its edges. */
export function fillOutline(
  surface: Surface,
  outline: readonly (readonly [x: number, y: number])[],
): void {
  const [first, second] = outline;
  const last = outline.at(-1);
  if (first === undefined || second === undefined || last === undefined) return;
  if (outline.length < MIN_OUTLINE_POINTS) return;
  surface.beginPath();
  surface.moveTo((last[0] + first[0]) / 2, (last[1] + first[1]) / 2);
  outline.forEach(([x, y], index) => {
    const [nextX, nextY] = outline[index + 1] ?? first;
    surface.quadraticCurveTo(x, y, (x + nextX) / 2, (y + nextY) / 2);
  });
  surface.closePath();
  surface.fill();
}
