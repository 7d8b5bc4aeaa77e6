import { hipsMiddle } from "./draw-panel";
import { drawArrow, labelRemark } from "./label-remark";
import type { RemarkDrawing } from "./remark-drawing";
import { traceLine } from "./shapes";
import type { Surface } from "./surface";

/**
 * Draws the other pose's hip height across this one, dashed, and an arrow from there to its own.
 *
 * Units:   panel units
 */
export function pointAtHips(surface: Surface, drawing: RemarkDrawing): void {
  const { remark, panel, earlier, view, window, pixel, slot } = drawing;
  if (remark.spots.at(-1)?.view !== view) return;
  const here = hipsMiddle(panel.marks[view]);
  const there = hipsMiddle(earlier.marks[view]);
  if (here === null || there === null) return;
  const right = window.x + window.width;
  surface.lineWidth = 1.5 * pixel;
  surface.setLineDash([6 * pixel, 4 * pixel]);
  traceLine(surface, [
    { x: window.x + 6 * pixel, y: there.y },
    { x: right - 6 * pixel, y: there.y },
  ]);
  surface.stroke();
  surface.setLineDash([]);
  const x = right - (12 + 14 * slot) * pixel;
  drawArrow(surface, { x, y: there.y }, { x, y: here.y }, pixel);
  const below = here.y > there.y;
  labelRemark(surface, drawing, {
    left: right - 6 * pixel,
    right: x,
    y: here.y + (below ? 18 : -9) * pixel,
  });
}
