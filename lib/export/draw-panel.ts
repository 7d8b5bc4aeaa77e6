import { markOf, PANEL, type Stretch, type ViewMarks } from "../body";
import type { Point, View } from "../geometry";
import type { Panel } from "../sheet";
import { drawMarks } from "./draw-marks";
import { drawStroke } from "./draw-stroke";
import { PALETTE } from "./palette";
import { type Box, traceBox, traceLine } from "./shapes";
import type { Surface } from "./surface";
import { WHOLE_VIEW } from "./whole-view";

/** What is drawn of a panel's view, and on what. */
export interface PanelDrawing {
  readonly panel: Panel;
  readonly view: View;
  /** The ground this panel looks at: see `groundUnder`. */
  readonly stretch: Stretch;
  /** How many panel units one pixel of the result is: lines, ticks and marks keep their size. */
  readonly pixel: number;
  /** What is seen of the view, panel units; the whole by default. */
  readonly window?: Box;
  /** Joint marks and the hip line; drawn unless false. */
  readonly marks?: boolean;
  /** Marks are drawn this much of their size, 1 by default: a small print wants smaller ones. */
  readonly markScale?: number;
}

/**
 * Draws one view of a panel: paper, ground line, ink, hip line, marks. The surface is moved and
 * scaled by the caller, so that a panel unit is its unit and the view's corner its origin.
 *
 * Units:   panel units, y down
 */
export function drawPanel(surface: Surface, drawing: PanelDrawing): void {
  const { panel, view, pixel, window = WHOLE_VIEW, marks = true, markScale = 1 } = drawing;
  surface.save();
  drawPaper(surface, window);
  traceBox(surface, window);
  surface.clip();
  drawGround(surface, drawing);
  drawInk(surface, panel, view);
  if (marks) {
    drawHipLine(surface, panel.marks[view], window, pixel);
    // To redraw: the new figure lies over the old ink.
    const alone = panel.ink[view].length === 0 || panel.toRedraw[view];
    drawMarks(surface, panel.marks[view], pixel * markScale, alone);
  }
  surface.restore();
}

/** Fills the paper of a view. Units: panel units. */
export function drawPaper(surface: Surface, window: Box = WHOLE_VIEW): void {
  traceBox(surface, window);
  surface.fillStyle = PALETTE.paper;
  surface.fill();
}

/** Draws a view's ink in its order. Units: panel units. */
export function drawInk(surface: Surface, panel: Pick<Panel, "ink">, view: View): void {
  for (const stroke of panel.ink[view]) drawStroke(surface, stroke);
}

const GROUND_MARGIN = 24; // panel units the line stays off the paper's edges
const TICKS_PER_LEG = 4;

/**
 * Draws the ground line. From the side it carries a tick every quarter of a leg length, a longer
 * one every whole, fixed to the ground: from panel to panel they move as the ground does.
 */
export function drawGround(
  surface: Surface,
  { view, stretch, pixel, window = WHOLE_VIEW }: Omit<PanelDrawing, "panel">,
): void {
  const left = window.x + GROUND_MARGIN;
  const right = window.x + window.width - GROUND_MARGIN;
  surface.save();
  surface.setLineDash([]);
  surface.strokeStyle = PALETTE.ground;
  surface.lineWidth = 1.2 * pixel;
  traceLine(surface, [
    { x: left, y: PANEL.groundY },
    { x: right, y: PANEL.groundY },
  ]);
  surface.stroke();
  if (view === "side") {
    for (const { x, long } of ticksOf(stretch, left, right)) {
      traceLine(surface, [
        { x, y: PANEL.groundY },
        { x, y: PANEL.groundY + (long ? 9 : 5) * pixel },
      ]);
      surface.stroke();
    }
  }
  surface.restore();
}

function ticksOf({ place, legLength }: Stretch, left: number, right: number) {
  const spacing = legLength / TICKS_PER_LEG;
  const middle = PANEL.width / 2 - place * legLength; // page x of the ground's zero
  const ticks: { x: number; long: boolean }[] = [];
  for (let n = Math.ceil((left - middle) / spacing); middle + n * spacing <= right; n += 1) {
    ticks.push({ x: middle + n * spacing, long: n % TICKS_PER_LEG === 0 });
  }
  return ticks;
}

/** Draws the dotted line at the hips' height, across the view, where the hips are marked. */
export function drawHipLine(surface: Surface, marks: ViewMarks, window: Box, pixel: number): void {
  const hips = hipsMiddle(marks);
  if (hips === null) return;
  surface.save();
  surface.setLineDash([1.5 * pixel, 3.5 * pixel]);
  surface.strokeStyle = PALETTE.faintText;
  surface.lineWidth = 1.1 * pixel;
  traceLine(surface, [
    { x: window.x, y: hips.y },
    { x: window.x + window.width, y: hips.y },
  ]);
  surface.stroke();
  surface.restore();
}

/** The middle between the hip marks of a view, or the one there is. Units: panel units. */
export function hipsMiddle(marks: ViewMarks): Point | null {
  const left = markOf(marks, "left-hip");
  const right = markOf(marks, "right-hip");
  if (left === null || right === null) return left ?? right;
  return { x: (left.x + right.x) / 2, y: (left.y + right.y) / 2 };
}
