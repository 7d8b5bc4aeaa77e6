import type { Stretch } from "../body";
import { VIEWS, type View } from "../geometry";
import type { Panel } from "../sheet";
import { traceSide } from "./draw-marks";
import { drawPanel } from "./draw-panel";
import { drawRemarks } from "./draw-remarks";
import { drawSign, type SignKind } from "./draw-sign";
import type { KeptEntry } from "./kept-entries";
import { levelColour, PALETTE, sideColour } from "./palette";
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
  const keepClear = coveredBefore(drawing, view, window, pixel);
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
  if (panel.toRedraw[view]) drawToRedraw(surface, redrawScrap(box, drawing.measure));
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

const TO_REDRAW_WORDS = "to redraw";
const TO_REDRAW: Face = { size: 13, weight: 600 };

/** Where a view says that it is to be redrawn: in its lower left corner. Units: page units. */
function redrawScrap(box: Box, measure: MeasureText): Box {
  const width = measure(TO_REDRAW_WORDS, TO_REDRAW) + 10;
  return { x: box.x + 4, y: box.y + box.height - 23, width, height: 19 };
}

function drawToRedraw(surface: Surface, scrap: Box): void {
  surface.save();
  surface.setLineDash([]);
  traceBox(surface, scrap, 2);
  surface.fillStyle = PALETTE.page;
  surface.fill();
  surface.strokeStyle = PALETTE.text;
  surface.lineWidth = 1.1;
  surface.stroke();
  surface.restore();
  const at = { x: scrap.x + 5, y: scrap.y + 14 };
  drawText(surface, { text: TO_REDRAW_WORDS, ...at, face: TO_REDRAW, colour: PALETTE.text });
}

/** What stands in a view's corners, which labels keep clear of. Units: panel units. */
function coveredBefore(
  drawing: CellDrawing,
  view: View,
  window: Box,
  pixel: number,
): readonly Box[] {
  const { cell, remarks, kept, measure } = drawing;
  const covered: Box[] = [];
  if (view === "side" && (remarks.length > 0 || kept.length > 0)) {
    covered.push(signCorner(window, pixel, drawing).box);
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

const SIGN_RADIUS = 11;
const SIGN_PITCH = 27; // units from one sign down to the next
const KEYS: Face = { size: 13, weight: 700 };
const KEYS_HEIGHT = 18;
const SIGN_LEVELS = ["shows", "may-show"] as const;

/** A group of signs in the corner, and the numbers to read on under it. */
interface Signs {
  readonly kinds: readonly { readonly kind: SignKind; readonly count: number }[];
  readonly keys: readonly number[];
  readonly colour: string;
}

/** The remarks still open, then what is kept. */
function signsOf({ remarks, kept }: Pick<CellDrawing, "remarks" | "kept">): readonly Signs[] {
  const kinds = SIGN_LEVELS.map((kind) => ({
    kind,
    count: remarks.filter(({ remark }) => remark.level === kind).length,
  })).filter(({ count }) => count > 0);
  const open = {
    kinds,
    keys: remarks.map(({ key }) => key),
    colour: levelColour(kinds.at(-1)?.kind ?? "tidy"),
  };
  const meant = {
    kinds: [{ kind: "on-purpose" as const, count: 1 }],
    keys: kept.map(({ key }) => key),
    colour: PALETTE.text,
  };
  return [open, meant].filter(({ keys }) => keys.length > 0);
}

/**
 * The upper corner of the side view where the signs and their numbers stand: the right one, or the left
 * where less is drawn. Units: panel units.
 */
function signCorner(window: Box, pixel: number, drawing: CellDrawing): SignCorner {
  const groups = signsOf(drawing);
  const signs = groups.reduce((sum, { kinds }) => sum + kinds.length, 0);
  const width = 40 * pixel;
  const height = (10 + signs * SIGN_PITCH + groups.length * KEYS_HEIGHT) * pixel;
  const left = { x: window.x, y: window.y, width, height };
  const right = { ...left, x: window.x + window.width - width };
  const { ink } = drawing.cell.panel;
  return inkWithin(left, ink.side) < inkWithin(right, ink.side)
    ? { at: "left", box: left }
    : { at: "right", box: right };
}

interface SignCorner {
  readonly at: "left" | "right";
  readonly box: Box;
}

/** How many points of ink lie within a box. Units: panel units. */
function inkWithin({ x, y, width, height }: Box, strokes: Panel["ink"]["side"]): number {
  return strokes.reduce((sum, { points }) => {
    const within = points.filter(
      ([px, py]) => px >= x && px <= x + width && py >= y && py <= y + height,
    );
    return sum + within.length;
  }, 0);
}

/**
 * The signs of the panel's remarks, one under the other so that they keep to the corner; how many
 * there are stands in each that stands for several, the numbers to read on under the last.
 */
function drawSigns(surface: Surface, drawing: CellDrawing): void {
  const { cell, strip } = drawing;
  const { side } = cell.views;
  const corner = signCorner(strip.windows.side, 1 / strip.scale, drawing).at;
  const inset = SIGN_RADIUS + 8;
  const x = corner === "right" ? side.x + side.width - inset : side.x + inset;
  const edge = corner === "right" ? side.x + side.width - 8 : side.x + 8;
  let y = side.y + SIGN_RADIUS + 9;
  for (const { kinds, keys, colour } of signsOf(drawing)) {
    for (const { kind, count } of kinds) {
      drawSign(surface, kind, { x, y }, SIGN_RADIUS, count > 1 ? count : undefined);
      y += SIGN_PITCH;
    }
    const text = keysInWords(keys);
    const wide = drawing.measure(text, KEYS) > 2 * SIGN_RADIUS;
    drawText(surface, {
      text,
      x: wide ? edge : x,
      y,
      face: KEYS,
      colour,
      align: wide ? corner : "center",
    });
    y += KEYS_HEIGHT;
  }
}

/** "3", "3–5", "3, 7": what follows on is told by its ends. */
function keysInWords(keys: readonly number[]): string {
  const runs: { from: number; to: number }[] = [];
  for (const key of keys) {
    const last = runs.at(-1);
    if (last?.to === key - 1) last.to = key;
    else runs.push({ from: key, to: key });
  }
  return runs.map(({ from, to }) => (from === to ? `${from}` : `${from}–${to}`)).join(", ");
}
