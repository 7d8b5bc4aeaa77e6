import type { HipBand, Remark } from "../gait";
import type { Sheet } from "../sheet";
import { drawCell } from "./draw-cell";
import { drawGaps } from "./draw-gaps";
import { drawHipChart, hipRange } from "./draw-hip-chart";
import { drawLegend } from "./draw-legend";
import { drawRuler } from "./draw-ruler";
import { drawSign } from "./draw-sign";
import { groundUnder } from "./ground-under";
import { type PageLayout, type PageWish, RULE_GAP } from "./page-layout";
import { PALETTE } from "./palette";
import { remarksOn } from "./remark-keys";
import { traceBox, traceLine } from "./shapes";
import type { StripRow } from "./strip-layout";
import type { Surface } from "./surface";
import { drawText } from "./text-run";
import type { Face, MeasureText } from "./typeface";

/**
 * Draws the annotated sheet: title band, strip with both views, marks and remark signs, ruler,
 * charts, the remarks in words, legend.
 *
 * Units:   page pixels at a width of 1920; scale the surface before for another width
 */
export function drawSheet(surface: Surface, page: PageLayout, wish: PageWish): void {
  traceBox(surface, { x: 0, y: 0, width: page.width, height: page.height });
  surface.fillStyle = PALETTE.page;
  surface.fill();
  for (const run of page.title) drawText(surface, run);
  drawRule(surface, page, page.titleRule, 2);
  for (const row of page.strip.rows) drawRow(surface, page, row, wish);
  if (page.strip.rows.length === 0) drawNoPanels(surface, page);
  for (const run of page.notes.runs) drawText(surface, run);
  for (const { kind, at } of page.notes.signs) drawSign(surface, kind, at, 8);
  drawRule(surface, page, page.legend.y - RULE_GAP, 1);
  drawLegend(surface, page.legend, wish.measure);
}

function drawRow(surface: Surface, page: PageLayout, row: StripRow, wish: PageWish): void {
  const { sheet, review, measure } = wish;
  const stretchOf = groundUnder(sheet);
  const panelById = new Map(sheet.panels.map((panel) => [panel.id, panel]));
  const labelSize = labelSizeFor(sheet, row, measure);
  drawGutter(surface, page, row);
  for (const cell of row.cells) {
    const remarks = remarksOn(page.keyed, cell.panel.id);
    const { strip } = page;
    drawCell(surface, { cell, strip, remarks, panelById, stretchOf, labelSize, measure });
  }
  drawRuler(
    surface,
    row,
    seenAt(page, () => true),
    measure,
  );
  const ids = new Set(row.cells.map(({ panel }) => panel.id));
  drawHipChart(
    surface,
    {
      box: row.hips,
      ruler: row.ruler,
      points: review.hipCurve.points.filter(({ panel }) => ids.has(panel)),
      bands: review.hipCurve.bands.filter((band) => touches(band, row)),
      range: hipRange(review.hipCurve.points),
      remarked: seenAt(page, ({ check }) => check === "hip-order"),
    },
    measure,
  );
  drawGaps(surface, row, review.gapRow, measure);
}

/** Whether a band reaches into the row's frames: one that does not would be drawn off the page. */
function touches({ points }: HipBand, { ruler }: StripRow): boolean {
  return points.some(({ frame }) => frame >= ruler.from && frame <= ruler.to);
}

/** The panels where remarks of a sort are seen. */
function seenAt({ keyed }: PageLayout, sort: (remark: Remark) => boolean): ReadonlySet<string> {
  const seen = keyed.filter(({ remark }) => sort(remark));
  return new Set(seen.map(({ remark }) => remark.panels.at(-1) ?? ""));
}

const GUTTER_FACE: Face = { size: 15, weight: 400 };

function drawGutter(surface: Surface, page: PageLayout, row: StripRow): void {
  const [first] = row.cells;
  if (first === undefined) return;
  const { side, front } = first.views;
  const x = page.legend.left;
  const beside = front.y === side.y;
  const labels = [
    { text: beside ? "side, front" : "side", y: side.y + side.height / 2 },
    { text: beside ? "" : "front", y: front.y + front.height / 2 },
    { text: "frame", y: row.ruler.y + 23 },
    { text: "hips, in", y: row.hips.y + row.hips.height / 2 - 9 },
    { text: "leg lengths", y: row.hips.y + row.hips.height / 2 + 9 },
    { text: "gaps", y: row.gaps.y + row.gaps.height / 2 },
  ];
  for (const { text, y } of labels) {
    drawText(surface, { text, x, y: y + 5, face: GUTTER_FACE, colour: PALETTE.faintText });
  }
}

const LABEL_SIZES = [18, 17, 16, 15, 14, 13, 12] as const;

/** The largest size at which every label of the row fits over its paper. */
function labelSizeFor(sheet: Sheet, row: StripRow, measure: MeasureText): number {
  const width = row.cells[0]?.label.width ?? 0;
  const fits = (size: number) =>
    sheet.panels.every(({ pose, weightOn }) => {
      const words = measure(pose, { size, weight: 700 });
      if (weightOn === null) return words <= width;
      const side = measure(weightOn, { size: size - 1, weight: 600 });
      return words + side + size * 1.4 <= width;
    });
  return LABEL_SIZES.find(fits) ?? 12;
}

function drawRule(surface: Surface, { legend }: PageLayout, y: number, width: number): void {
  surface.save();
  surface.setLineDash([]);
  surface.strokeStyle = width > 1 ? PALETTE.graphite : PALETTE.rule;
  surface.lineWidth = width;
  traceLine(surface, [
    { x: legend.left, y },
    { x: legend.left + legend.width, y },
  ]);
  surface.stroke();
  surface.restore();
}

function drawNoPanels(surface: Surface, page: PageLayout): void {
  drawText(surface, {
    text: "No panels on this strip yet.",
    x: page.width / 2,
    y: page.strip.bottom + 60,
    face: { size: 18, weight: 400 },
    colour: PALETTE.faintText,
    align: "center",
  });
}
