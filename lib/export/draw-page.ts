import { drawLegend } from "./draw-legend";
import { drawSign } from "./draw-sign";
import { drawStripRow } from "./draw-strip-row";
import { legendOf } from "./legend-of";
import { type PageWish, RULE_GAP } from "./page-frame";
import type { PageLayout } from "./page-layout";
import { PALETTE } from "./palette";
import { traceBox, traceLine } from "./shapes";
import type { Surface } from "./surface";
import { drawText } from "./text-run";

/**
 * Draws one page of the annotated sheet: title band, strip with both views, marks and signs, ruler,
 * charts, the remarks in words, legend.
 *
 * Units:   page units; scale the surface before for another width
 */
export function drawPage(surface: Surface, page: PageLayout, wish: PageWish): void {
  traceBox(surface, { x: 0, y: 0, width: page.width, height: page.height });
  surface.fillStyle = PALETTE.page;
  surface.fill();
  for (const run of page.title) drawText(surface, run);
  drawRule(surface, page, page.titleRule, 2);
  for (const row of page.strip.rows) drawStripRow(surface, page, row, wish);
  if (wish.sheet.panels.length === 0 && page.number === 1) drawNoPanels(surface, page);
  for (const run of page.notes.runs) drawText(surface, run);
  for (const { kind, at } of page.notes.signs) drawSign(surface, kind, at, 8);
  if (page.legend !== null) {
    drawRule(surface, page, page.legend.y - RULE_GAP, 1);
    drawLegend(surface, page.legend, legendOf(wish.sheet, wish.review), wish.measure);
  }
  if (page.count > 1) drawNumber(surface, page);
}

function drawRule(surface: Surface, { format, width }: PageLayout, y: number, thick: number): void {
  surface.save();
  surface.setLineDash([]);
  surface.strokeStyle = thick > 1 ? PALETTE.graphite : PALETTE.rule;
  surface.lineWidth = thick;
  traceLine(surface, [
    { x: format.margin, y },
    { x: width - format.margin, y },
  ]);
  surface.stroke();
  surface.restore();
}

const NUMBER_DROP = 14; // units into the margin: 7.2 mm off the paper's edge

function drawNumber(surface: Surface, { format, width, height, number, count }: PageLayout): void {
  drawText(surface, {
    text: `page ${number} of ${count}`,
    x: width - format.margin,
    y: height - format.margin + NUMBER_DROP,
    face: { size: 14, weight: 400 },
    colour: PALETTE.faintText,
    align: "right",
  });
}

function drawNoPanels(surface: Surface, page: PageLayout): void {
  drawText(surface, {
    text: "No panels on this strip yet.",
    x: page.width / 2,
    y: page.strip.bottom - 50,
    face: { size: 18, weight: 400 },
    colour: PALETTE.faintText,
    align: "center",
  });
}
