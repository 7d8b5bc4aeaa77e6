import { PALETTE } from "./palette";
import { type Ruler, rulerX, spread } from "./ruler";
import { traceCircle, traceLine } from "./shapes";
import type { Cell, StripRow } from "./strip-layout";
import type { Surface } from "./surface";
import { drawText } from "./text-run";
import type { Face, MeasureText } from "./typeface";

const NUMBER: Face = { size: 17, weight: 700 };
const NUMBER_DROP = 28; // px from the ruler to the figures' baseline
const MIN_TICK_GAP = 7; // px: closer ticks would read as a grey bar

/**
 * Draws the ruler of a row with its ticks, the stems that its panels hang by, and the frames'
 * numbers. `remarked` names the panels whose stem is drawn heavier, since something shows there.
 *
 * Units:   page pixels
 */
export function drawRuler(
  surface: Surface,
  row: StripRow,
  remarked: ReadonlySet<string>,
  measure: MeasureText,
): void {
  surface.save();
  surface.setLineDash([]);
  drawLine(surface, row.ruler);
  for (const cell of row.cells) {
    drawStem(surface, cell, row.ruler, remarked.has(cell.panel.id));
  }
  drawNumbers(surface, row, measure);
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

function drawNumbers(surface: Surface, { cells, ruler }: StripRow, measure: MeasureText): void {
  const frames = [...new Set(cells.map((cell) => cell.panel.frame))];
  const wishes = frames.map((frame) => ({
    at: rulerX(ruler, frame),
    width: measure(String(frame), NUMBER),
  }));
  const edges = { left: ruler.left - 40, right: ruler.right + 40 };
  const middles = spread(wishes, edges, 8);
  frames.forEach((frame, index) => {
    drawText(surface, {
      text: String(frame),
      x: middles[index] ?? rulerX(ruler, frame),
      y: ruler.y + NUMBER_DROP,
      face: NUMBER,
      colour: PALETTE.text,
      align: "center",
    });
  });
}
