import type { Point } from "../geometry";
import { freePlace } from "./free-place";
import { levelColour, PALETTE } from "./palette";
import type { RemarkDrawing } from "./remark-drawing";
import { amountOf } from "./remark-shape";
import { traceArrowHead, traceBox, traceLine } from "./shapes";
import type { Surface } from "./surface";
import { drawText } from "./text-run";
import { type Face, measureShipped } from "./typeface";

const LABEL_PX = 13;
const NARROW_PX = 125; // on a narrower view the amount would cover the figure: its note tells it
const SCRAP_PX = 15; // height of the scrap of paper under a label
const BASELINE_PX = 11.5; // from the scrap's top

/**
 * Writes the remark's number and how much it is on a scrap of paper: to the right of the place, or
 * to its left where the view ends before, and clear of what is written already.
 *
 * Units:   panel units; `y` is the baseline wished for
 */
export function labelRemark(
  surface: Surface,
  { remark, key, window, pixel, covered }: RemarkDrawing,
  { right, left, y }: { readonly right: number; readonly left: number; readonly y: number },
): void {
  const amount = amountOf(remark.measured);
  const narrow = window.width < NARROW_PX * pixel;
  const numbered = narrow ? `${key}` : `${key}: ${amount}`;
  const text = key === null ? amount : numbered;
  const face: Face = { size: LABEL_PX * pixel, weight: 700 };
  const width = measureShipped(text, face);
  const edge = window.x + window.width - 6 * pixel;
  const x = right + width <= edge ? right : Math.max(window.x + 6 * pixel, left - width);
  const scrap = freePlace(
    {
      x: x - 2 * pixel,
      y: y - BASELINE_PX * pixel,
      width: width + 4 * pixel,
      height: SCRAP_PX * pixel,
    },
    covered,
    window,
  );
  covered.push(scrap);
  surface.save();
  traceBox(surface, scrap);
  surface.fillStyle = PALETTE.paper;
  surface.globalAlpha = 0.85;
  surface.fill();
  surface.restore();
  const at = { x: scrap.x + 2 * pixel, y: scrap.y + BASELINE_PX * pixel };
  drawText(surface, { text, ...at, face, colour: levelColour(remark.level) });
}

const MIN_SHAFT_PX = 9; // a shorter arrow is all head

/** Draws an arrow in the stroke and fill of the moment. Units: panel units. */
export function drawArrow(surface: Surface, from: Point, to: Point, pixel: number): void {
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
