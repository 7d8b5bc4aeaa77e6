import type { Level } from "../gait";
import type { Point } from "../geometry";
import { LETTER_PX, RING_PX } from "./lay-out-remarks";
import { levelColour } from "./palette";
import type { RemarkShape } from "./point-at/shape";
import { traceArrowHead, traceCircle, traceLine } from "./shapes";
import type { Surface } from "./surface";
import { drawText } from "./text-run";

const DASHED_PX = 1.5;
const SOLID_PX = 2.4;

/**
 * Draws a remark's lines in the colour of its level. The wash over a gap is for the screen alone: a grey copy
 * would lose it.
 *
 * Units:   panel units
 */
export function drawRemarkShape(
  surface: Surface,
  { dashed, solid, rings, letters, arrow }: RemarkShape,
  level: Level,
  pixel: number,
): void {
  const colour = levelColour(level);
  surface.save();
  surface.strokeStyle = colour;
  surface.fillStyle = colour;
  surface.lineCap = "round";
  surface.lineWidth = DASHED_PX * pixel;
  surface.setLineDash([4 * pixel, 3 * pixel]);
  for (const path of dashed) strokePath(surface, path);
  surface.setLineDash([]);
  for (const ring of rings) {
    traceCircle(surface, ring, RING_PX * pixel);
    surface.stroke();
  }
  surface.lineWidth = SOLID_PX * pixel;
  for (const path of solid) strokePath(surface, path);
  if (arrow !== null) drawArrow(surface, ...arrow, pixel);
  for (const { text, at } of letters) {
    const face = { size: LETTER_PX * pixel, weight: 700 } as const;
    drawText(surface, { text, ...at, face, colour, align: "center" });
  }
  surface.restore();
}

function strokePath(surface: Surface, path: readonly Point[]): void {
  traceLine(surface, path);
  surface.stroke();
}

const MIN_SHAFT_PX = 9; // a shorter arrow is all head

/** Draws an arrow in the stroke and fill of the moment. Units: panel units. */
function drawArrow(surface: Surface, from: Point, to: Point, pixel: number): void {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const head = Math.min(7 * pixel, Math.max(3 * pixel, length * 0.6));
  if (length > MIN_SHAFT_PX * pixel) {
    surface.lineWidth = 1.8 * pixel;
    traceLine(surface, [from, to]);
    surface.stroke();
  }
  traceArrowHead(surface, from, to, head);
  surface.fill();
}
