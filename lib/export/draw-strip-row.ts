import type { HipBand } from "../gait";
import type { Sheet } from "../sheet";
import { drawCell } from "./draw-cell";
import { drawFootfalls } from "./draw-footfalls";
import { drawGaps } from "./draw-gaps";
import { drawHipChart, hipRange } from "./draw-hip-chart";
import { drawRuler } from "./draw-ruler";
import { groundUnder } from "./ground-under";
import { hipRemarks } from "./hip-remarks";
import type { PageWish } from "./page-frame";
import type { PageLayout } from "./page-layout";
import { PALETTE } from "./palette";
import { keptOn, remarksOn } from "./remark-keys";
import type { StripRow } from "./strip-layout";
import type { Surface } from "./surface";
import { drawText } from "./text-run";
import type { Face, MeasureText } from "./typeface";

/** Draws one row of the strip: its panels, the ruler they hang from, the charts on the same frames. */
export function drawStripRow(
  surface: Surface,
  page: PageLayout,
  row: StripRow,
  wish: PageWish,
): void {
  const { sheet, measure } = wish;
  const stretchOf = groundUnder(sheet);
  const { panels } = sheet;
  const load = sheet.head.load ?? 0;
  const labelSize = labelSizeFor(sheet, row, measure);
  const { strip } = page;
  drawGutter(surface, page, row, wish);
  for (const cell of row.cells) {
    const remarks = remarksOn(page.keyed, cell.panel.id);
    const kept = keptOn(page.kept, cell.panel.id);
    drawCell(surface, { cell, strip, remarks, kept, panels, stretchOf, load, labelSize, measure });
  }
  const seen = seenAt(page);
  drawRuler(surface, row, { remarked: seen, head: sheet.head, measure });
  drawCharts(surface, page, row, wish);
}

function drawCharts(surface: Surface, page: PageLayout, row: StripRow, wish: PageWish): void {
  const { review, measure } = wish;
  const ids = new Set(row.cells.map(({ panel }) => panel.id));
  drawHipChart(
    surface,
    {
      box: row.hips,
      ruler: row.ruler,
      points: review.hipCurve.points.filter(({ panel }) => ids.has(panel)),
      bands: review.hipCurve.bands.filter((band) => touches(band, row)),
      range: hipRange(review.hipCurve.points),
      remarked: hipRemarks(page.keyed.map(({ remark }) => remark)),
    },
    measure,
  );
  drawFootfalls(surface, row, review.footfalls);
  drawGaps(surface, row, review.gapRow, measure);
}

/** Whether a band reaches into the row's frames: one that does not would be drawn off the page. */
function touches({ points }: HipBand, { ruler }: StripRow): boolean {
  return points.some(({ frame }) => frame >= ruler.from && frame <= ruler.to);
}

/** The panels where remarks are seen. */
function seenAt({ keyed }: PageLayout): ReadonlySet<string> {
  return new Set(keyed.map(({ remark }) => remark.panels.at(-1) ?? ""));
}

const GUTTER_FACE: Face = { size: 14, weight: 400 };

function drawGutter(
  surface: Surface,
  { format }: PageLayout,
  row: StripRow,
  { sheet }: PageWish,
): void {
  const [first] = row.cells;
  if (first === undefined) return;
  const { side, front } = first.views;
  const beside = front.y === side.y;
  const middle = ({ y, height }: { y: number; height: number }) => y + height / 2;
  const labels = [
    { text: beside ? "side, front" : "side", y: middle(side) },
    { text: beside ? "" : "front", y: middle(front) },
    { text: "frame", y: row.ruler.y + 23 },
    { text: sheet.head.firstFrame === undefined ? "" : "in the shot", y: row.ruler.y + 43 },
    { text: "hips, in", y: middle(row.hips) - 9 },
    { text: "leg lengths", y: middle(row.hips) + 9 },
    { text: "footfalls", y: middle(row.footfalls) },
    { text: "gaps", y: middle(row.gaps) },
  ];
  for (const { text, y } of labels) {
    const x = format.margin;
    drawText(surface, { text, x, y: y + 5, face: GUTTER_FACE, colour: PALETTE.faintText });
  }
}

const LABEL_SIZES = [18, 17, 16, 15, 14, 13, 12] as const;

/** The largest size at which every label of the strip fits over its paper; the least where none does. */
function labelSizeFor(sheet: Sheet, row: StripRow, measure: MeasureText): number {
  const width = row.cells[0]?.label.width ?? 0;
  const fits = (size: number) =>
    sheet.panels.every(({ pose, weightOn }) => {
      const words = measure(pose, { size, weight: 700 });
      if (weightOn === null) return words <= width;
      const side = measure(weightOn, { size: size - 1, weight: 600 });
      return words + side + size * 1.6 <= width;
    });
  return LABEL_SIZES.find(fits) ?? 12;
}
