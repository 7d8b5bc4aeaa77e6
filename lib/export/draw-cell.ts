import type { Stretch } from "../body";
import { VIEWS, type View } from "../geometry";
import type { Panel } from "../sheet";
import { cornerFoot, drawCornerSigns, signCorner } from "./draw-corner-signs";
import { traceSide } from "./draw-marks";
import { drawPanel } from "./draw-panel";
import { drawRemarks } from "./draw-remarks";
import { drawToRedraw, redrawScrap } from "./draw-to-redraw";
import type { KeptEntry } from "./kept-entries";
import { PALETTE, sideColour } from "./palette";
import type { Keyed, KeyedRemark } from "./remark-keys";
import { type Box, traceBox } from "./shapes";
import type { Cell, StripLayout } from "./strip-layout";
import type { Surface } from "./surface";
import { drawText } from "./text-run";
import type { Face, MeasureText } from "./typeface";

/** What a cell is drawn with. */
export interface CellDrawing {
  readonly cell: Cell;
  readonly strip: StripLayout;
  /** Remarks whose sign hangs here. */
  readonly remarks: readonly KeyedRemark[];
  /** What is kept on purpose and seen here. */
  readonly kept: readonly Keyed<KeptEntry>[];
  readonly panels: readonly Panel[];
  readonly stretchOf: (panel: Panel) => Stretch;
  readonly load: number;
  readonly labelSize: number;
  readonly measure: MeasureText;
}

/**
 * Draws one panel as it hangs on the page: its label, both views in their papers, what the remarks
 * point at, and the sign with the count of remarks in the corner.
 *
 * Units:   page pixels
 */
export function drawCell(surface: Surface, drawing: CellDrawing): void {
  drawLabel(surface, drawing);
  for (const view of VIEWS) drawView(surface, drawing, view);
  drawCornerSigns(surface, drawing);
}

function drawView(surface: Surface, drawing: CellDrawing, view: View): void {
  const { cell, strip, stretchOf, remarks, panels, load } = drawing;
  const { panel } = cell;
  const box = cell.views[view];
  const window = strip.windows[view];
  const pixel = 1 / strip.scale;
  surface.save();
  surface.translate(box.x, box.y);
  surface.scale(strip.scale, strip.scale);
  surface.translate(-window.x, -window.y);
  const markScale = Math.min(1, Math.max(0.55, strip.scale * 2.8));
  drawPanel(surface, { panel, view, stretch: stretchOf(panel), pixel, window, markScale });
  const keepClear = coveredBefore(drawing, view);
  drawRemarks(surface, {
    panel,
    view,
    remarks,
    panels,
    stretchOf,
    load,
    window,
    pixel,
    keepClear,
  });
  surface.restore();
  if (panel.toRedraw[view]) drawToRedraw(surface, redrawScrap(box, drawing.measure));
  drawRim(surface, box, remarks.some(pointsAt(panel.id, view)));
  if (panel.ink[view].length === 0 && Object.keys(panel.marks[view]).length === 0) {
    drawEmpty(surface, box, keepClear.length > 0 ? cornerFoot(drawing) : box.y);
  }
}

function drawRim(surface: Surface, box: Box, remarked: boolean): void {
  surface.save();
  surface.setLineDash([]);
  traceBox(surface, box, 2);
  surface.strokeStyle = remarked ? PALETTE.graphite : PALETTE.paperEdge;
  surface.lineWidth = remarked ? 1.8 : 1.1;
  surface.stroke();
  surface.restore();
}

/** What stands in a view's corners, which labels keep clear of. Units: panel units. */
function coveredBefore(drawing: CellDrawing, view: View): readonly Box[] {
  const { cell, strip, remarks, kept, measure } = drawing;
  const window = strip.windows[view];
  const pixel = 1 / strip.scale;
  const covered: Box[] = [];
  if (view === "side" && (remarks.length > 0 || kept.length > 0)) {
    covered.push(signCorner(drawing).box);
  }
  if (cell.panel.toRedraw[view]) {
    const { x, y, width, height } = redrawScrap(cell.views[view], measure);
    const from = cell.views[view];
    covered.push({
      x: window.x + (x - from.x) * pixel,
      y: window.y + (y - from.y) * pixel,
      width: width * pixel,
      height: height * pixel,
    });
  }
  return covered;
}

const EMPTY: Face = { size: 14, weight: 400 };

/** Says that a view is bare: in its middle, under what hangs in its corner, or nowhere. */
function drawEmpty(surface: Surface, box: Box, clear: number): void {
  const y = Math.max(box.y + box.height * 0.45, clear + EMPTY.size);
  if (y > box.y + box.height - ROOM_FOR_REDRAW) return;
  drawText(surface, {
    text: "not drawn yet",
    x: box.x + box.width / 2,
    y,
    face: EMPTY,
    colour: PALETTE.faintText,
    align: "center",
  });
}

const ROOM_FOR_REDRAW = 28; // units at a view's foot

function drawLabel(surface: Surface, { cell, labelSize, measure }: CellDrawing): void {
  const { panel, label } = cell;
  drawText(surface, {
    text: panel.pose,
    x: label.x + 1,
    y: label.y,
    face: { size: labelSize, weight: 700 },
    colour: PALETTE.text,
  });
  if (panel.weightOn === null) return;
  // Where there is no room for both words the side is told by its shape alone.
  const face: Face = { size: labelSize - 1, weight: 600 };
  const pose = measure(panel.pose, { size: labelSize, weight: 700 });
  const words = measure(panel.weightOn, face);
  const fits = pose + words + labelSize * 1.6 <= label.width;
  const right = label.x + label.width - 1;
  if (fits) {
    const text = panel.weightOn;
    const colour = sideColour(panel.weightOn);
    drawText(surface, { text, x: right, y: label.y, face, colour, align: "right" });
  }
  const x = right - (fits ? words : -labelSize * 0.2) - labelSize * 0.62;
  traceSide(surface, panel.weightOn, { x, y: label.y - labelSize * 0.34 }, labelSize * 0.3);
  surface.fillStyle = sideColour(panel.weightOn);
  surface.fill();
}

/** Whether a remark points at this view of the panel. */
function pointsAt(panel: string, view: View): (keyed: KeyedRemark) => boolean {
  return ({ remark }) => remark.spots.some((spot) => spot.panel === panel && spot.view === view);
}
