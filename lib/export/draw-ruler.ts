import { type SheetHead, shotFrame } from "../sheet";
import { PALETTE } from "./palette";
import { type Ruler, rulerX, spread } from "./ruler";
import { traceCircle, traceLine } from "./shapes";
import type { Cell, StripRow } from "./strip-layout";
import type { Surface } from "./surface";
import { drawText } from "./text-run";
import type { Face, MeasureText } from "./typeface";

const NUMBER: Face = { size: 17, weight: 700 };
const SHOT_NUMBER: Face = { size: 14, weight: 400 };
const SHOT_DROP = 20; // units from the sheet's numbers down to the shot's
const NUMBER_DROP = 28; // units from the ruler to the figures' baseline
const MIN_TICK_GAP = 7; // units: closer ticks would read as a grey bar

/** What a ruler is drawn with. */
export interface RulerDrawing {
  /** The panels whose stem is drawn heavier, since something shows there. */
  readonly remarked: ReadonlySet<string>;
  /** Where the shot's own frame numbers come from, if it has any. */
  readonly head: Pick<SheetHead, "firstFrame">;
  readonly measure: MeasureText;
}

/**
 * Draws the ruler of a row with its ticks, the stems that its panels hang by, and the frames' numbers,
 * the shot's own under the sheet's.
 *
 * Units:   page units
 */
export function drawRuler(surface: Surface, row: StripRow, drawing: RulerDrawing): void {
  const { remarked, head, measure } = drawing;
  surface.save();
  surface.setLineDash([]);
  drawLine(surface, row.ruler);
  for (const cell of row.cells) {
    drawStem(surface, cell, row.ruler, remarked.has(cell.panel.id));
  }
  drawNumbers(surface, row, head, measure);
  surface.restore();
}

function drawLine(surface: Surface, ruler: Ruler): void {
  const { from, to, left, right, y } = ruler;
  surface.strokeStyle = PALETTE.graphite;
  surface.lineWidth = 1.6;
  traceLine(surface, [
    { x: left, y },
    { x: right, y },
  ]);
  surface.stroke();
  const tickGap = to > from ? (right - left) / (to - from) : 0;
  if (tickGap < MIN_TICK_GAP) return;
  surface.lineWidth = 1;
  for (let frame = from; frame <= to; frame += 1) {
    const x = rulerX(ruler, frame);
    traceLine(surface, [
      { x, y: y - 4 },
      { x, y: y + 4 },
    ]);
    surface.stroke();
  }
}

/** Draws one panel's stem: from the middle of its paper down to its frame on the ruler. */
export function drawStem(surface: Surface, cell: Cell, ruler: Ruler, remarked: boolean): void {
  const foot = { x: rulerX(ruler, cell.panel.frame), y: ruler.y };
  const { side, front } = cell.views;
  const from = {
    x: cell.label.x + cell.label.width / 2,
    y: Math.max(side.y + side.height, front.y + front.height),
  };
  const reach = (foot.y - from.y) * 0.55;
  surface.strokeStyle = remarked ? PALETTE.raspberry : PALETTE.graphite;
  surface.fillStyle = surface.strokeStyle;
  surface.lineWidth = remarked ? 2.2 : 1.3;
  surface.beginPath();
  surface.moveTo(from.x, from.y);
  surface.bezierCurveTo(from.x, from.y + reach, foot.x, foot.y - reach, foot.x, foot.y);
  surface.stroke();
  traceCircle(surface, foot, cell.panel.pose === "contact" ? 5.5 : 3.5);
  surface.fill();
}

function drawNumbers(
  surface: Surface,
  { cells, ruler }: StripRow,
  head: RulerDrawing["head"],
  measure: MeasureText,
): void {
  const frames = [...new Set(cells.map((cell) => cell.panel.frame))];
  const inShot = head.firstFrame !== undefined;
  const shotText = (frame: number) => (inShot ? String(shotFrame(frame, head)) : "");
  const wishes = frames.map((frame) => ({
    at: rulerX(ruler, frame),
    width: Math.max(measure(String(frame), NUMBER), measure(shotText(frame), SHOT_NUMBER)),
  }));
  const edges = { left: ruler.left - 40, right: ruler.right + 40 };
  const middles = spread(wishes, edges, 8);
  frames.forEach((frame, index) => {
    const x = middles[index] ?? rulerX(ruler, frame);
    const y = ruler.y + NUMBER_DROP;
    const own = { text: String(frame), x, y, face: NUMBER, colour: PALETTE.text };
    drawText(surface, { ...own, align: "center" });
    const shot = { text: shotText(frame), x, y: y + SHOT_DROP, face: SHOT_NUMBER };
    drawText(surface, { ...shot, colour: PALETTE.faintText, align: "center" });
  });
}
