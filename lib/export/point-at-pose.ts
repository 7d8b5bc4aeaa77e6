import { drawArrow, labelRemark } from "./label-remark";
import type { RemarkDrawing } from "./remark-drawing";
import { remarkShape } from "./remark-shape";
import { traceLine } from "./shapes";
import type { Surface } from "./surface";

/**
 * Draws what one pose alone shows: the weight's plumb line, a foot's gap to the ground, its tilt.
 *
 * Units:   panel units
 */
export function pointAtPose(surface: Surface, drawing: RemarkDrawing): void {
  const { remark, panel, view, pixel } = drawing;
  const shape = remarkShape(remark, panel, view);
  if (shape === null) return;
  surface.lineWidth = 1.5 * pixel;
  surface.setLineDash([4 * pixel, 3 * pixel]);
  for (const line of shape.dashed) {
    traceLine(surface, line);
    surface.stroke();
  }
  surface.setLineDash([]);
  surface.lineWidth = 2.4 * pixel;
  for (const line of shape.solid) {
    traceLine(surface, line);
    surface.stroke();
  }
  if (shape.arrow !== null) drawArrow(surface, ...shape.arrow, pixel);
  const { x, y } = shape.label;
  labelRemark(surface, drawing, { right: x + 8 * pixel, left: x - 8 * pixel, y: y + 18 * pixel });
}
