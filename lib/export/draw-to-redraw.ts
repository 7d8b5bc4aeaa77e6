import { PALETTE } from "./palette";
import { type Box, traceBox } from "./shapes";
import type { Surface } from "./surface";
import { drawText } from "./text-run";
import type { Face, MeasureText } from "./typeface";

const TO_REDRAW_WORDS = "to redraw";
const TO_REDRAW: Face = { size: 13, weight: 600 };

/** Where a view says that it is to be redrawn: in its lower left corner. Units: page units. */
export function redrawScrap(box: Box, measure: MeasureText): Box {
  const width = measure(TO_REDRAW_WORDS, TO_REDRAW) + 10;
  return { x: box.x + 4, y: box.y + box.height - 23, width, height: 19 };
}

/** Says that a view's drawing is still the old one. */
export function drawToRedraw(surface: Surface, scrap: Box): void {
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
