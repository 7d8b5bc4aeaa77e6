import type { Stretch } from "../body";
import { VIEWS, type View } from "../geometry";
import type { Panel } from "../sheet";
import { traceSide } from "./draw-marks";
import { drawPanel } from "./draw-panel";
import { drawRemarks } from "./draw-remarks";
import { drawSign } from "./draw-sign";
import { levelColour, PALETTE, sideColour } from "./palette";
import type { KeyedRemark } from "./remark-keys";
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
  readonly panelById: ReadonlyMap<string, Panel>;
  readonly stretchOf: (panel: Panel) => Stretch;
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
  drawSideShape(surface, drawing);
  for (const view of VIEWS) drawView(surface, drawing, view);
  drawSigns(surface, drawing);
}

function drawView(surface: Surface, drawing: CellDrawing, view: View): void {
  const { cell, strip, stretchOf, remarks, panelById } = drawing;
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
  const keepClear =
    remarks.length > 0 && view === "side" ? [signCorner(window, pixel, remarks)] : [];
  drawRemarks(surface, {
    panel,
    view,
    remarks,
    panelById,
    stretchOf,
    window,
    pixel,
    keepClear,
  });
  surface.restore();
  drawRim(surface, box, remarks.some(pointsAt(panel.id, view)));
  if (panel.ink[view].length === 0 && Object.keys(panel.marks[view]).length === 0) {
    drawEmpty(surface, box);
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

function drawEmpty(surface: Surface, box: Box): void {
  drawText(surface, {
    text: "not drawn yet",
    x: box.x + box.width / 2,
    y: box.y + box.height * 0.45,
    face: { size: 14, weight: 400 },
    colour: PALETTE.faintText,
    align: "center",
  });
}

function drawLabel(surface: Surface, { cell, labelSize }: CellDrawing): void {
  const { panel, label } = cell;
  drawText(surface, {
    text: panel.pose,
    x: label.x + 1,
    y: label.y,
    face: { size: labelSize, weight: 700 },
    colour: PALETTE.text,
  });
  if (panel.weightOn === null) return;
  const right = label.x + label.width - 1;
  drawText(surface, {
    text: panel.weightOn,
    x: right,
    y: label.y,
    face: { size: labelSize - 1, weight: 600 },
    colour: sideColour(panel.weightOn),
    align: "right",
  });
}

/** The side's shape stands before its word, which ends at the label's right edge. */
function drawSideShape(surface: Surface, { cell, labelSize, measure }: CellDrawing): void {
  const { weightOn } = cell.panel;
  if (weightOn === null) return;
  const words = measure(weightOn, { size: labelSize - 1, weight: 600 });
  const at = {
    x: cell.label.x + cell.label.width - 1 - words - labelSize * 0.55,
    y: cell.label.y - labelSize * 0.34,
  };
  traceSide(surface, weightOn, at, labelSize * 0.3);
  surface.fillStyle = sideColour(weightOn);
  surface.fill();
}

/** Whether a remark points at this view of the panel. */
function pointsAt(panel: string, view: View): (keyed: KeyedRemark) => boolean {
  return ({ remark }) => remark.spots.some((spot) => spot.panel === panel && spot.view === view);
}

const SIGN_RADIUS = 11;
const SIGN_PITCH = 27; // px from one sign down to the next
const KEYS: Face = { size: 13, weight: 700 };
const SIGN_LEVELS = ["shows", "may-show"] as const;

/** The corner of the side view where the signs and their numbers stand. Units: panel units. */
function signCorner(window: Box, pixel: number, remarks: CellDrawing["remarks"]): Box {
  const signs = new Set(remarks.map(({ remark }) => remark.level)).size;
  const [width, height] = [40 * pixel, (10 + signs * SIGN_PITCH + 12) * pixel];
  return { x: window.x + window.width - width, y: window.y, width, height };
}

/**
 * The signs of the panel's remarks, one under the other so that they keep to the corner; how many
 * there are stands in each that stands for several, the numbers to read on under the last.
 */
function drawSigns(surface: Surface, { cell, remarks, measure }: CellDrawing): void {
  const { side } = cell.views;
  const x = side.x + side.width - SIGN_RADIUS - 8;
  let y = side.y + SIGN_RADIUS + 9;
  let last: SignLevel = "may-show";
  for (const level of SIGN_LEVELS) {
    const count = remarks.filter(({ remark }) => remark.level === level).length;
    if (count === 0) continue;
    drawSign(surface, level, { x, y }, SIGN_RADIUS, count > 1 ? count : undefined);
    y += SIGN_PITCH;
    last = level;
  }
  const text = keysInWords(remarks);
  const wide = measure(text, KEYS) > 2 * SIGN_RADIUS;
  drawText(surface, {
    text,
    x: wide ? side.x + side.width - 8 : x,
    y,
    face: KEYS,
    colour: levelColour(last),
    align: wide ? "right" : "center",
  });
}

type SignLevel = (typeof SIGN_LEVELS)[number];

/** "3", "3–5": the remarks of one panel are numbered on. */
function keysInWords(remarks: readonly KeyedRemark[]): string {
  const [first, last] = [remarks[0], remarks.at(-1)];
  if (first === undefined || last === undefined) return "";
  return first === last ? String(first.key) : `${first.key}–${last.key}`;
}
