import { VIEWS, type View } from "../geometry";
import type { Panel, Sheet } from "../sheet";
import type { Ruler } from "./ruler";
import type { Box } from "./shapes";
import { viewWindows } from "./view-window";

/** One panel's place on the page. */
export interface Cell {
  readonly panel: Panel;
  /** Where its paper hangs, by view. */
  readonly views: Readonly<Record<View, Box>>;
  /** The line above the paper: pose and weight side. `y` is the baseline. */
  readonly label: { readonly x: number; readonly y: number; readonly width: number };
}

/** One row of panels with the ruler they hang from and the charts below it. */
export interface StripRow {
  readonly cells: readonly Cell[];
  readonly ruler: Ruler;
  readonly hips: Box;
  readonly gaps: Box;
  /** The first panel of the next row, whose gap is told at the end of this one. */
  readonly next: Panel | null;
  readonly bottom: number;
}

export interface StripLayout {
  readonly rows: readonly StripRow[];
  /** What is seen of each view, panel units. */
  readonly windows: Readonly<Record<View, Box>>;
  /** Page pixels a panel unit. */
  readonly scale: number;
  readonly bottom: number;
}

const MOST_A_ROW = 12; // at 1920 px a panel of a longer row would be narrower than 130 px
const VIEW_GAP = 10;
const LABEL_HEIGHT = 30;
const STEMS_HEIGHT = 58;
const NUMBERS_HEIGHT = 40;
const HIPS_HEIGHT = 92;
const GAPS_HEIGHT = 30;
const CHART_GAP = 10;
const ROW_GAP = 44;
const BESIDE_PREFERRED = 0.9; // a little smaller is well paid by a page of half the height
const MOST_VIEWS_HEIGHT = 800; // px for both views, so that title, charts and notes fit one page

/**
 * Lays out the strip in rows of up to twelve panels, as equal as can be. The side view hangs over
 * the front view; where few panels leave room, beside it, if that makes the drawings larger. The
 * ruler runs from the middle of the row's first panel to that of its last: an even timing hangs
 * straight, an uneven one leans.
 *
 * Units:   page pixels at a page width of 1920
 * @param spare height that the page has left: stems and charts of a single row take some of it
 */
export function layOutStrip(
  sheet: Sheet,
  area: Omit<Box, "height">,
  spare: number = 0,
): StripLayout {
  const windows = viewWindows(sheet);
  const count = sheet.panels.length;
  const rowCount = Math.max(1, Math.ceil(count / MOST_A_ROW));
  const perRow = Math.max(1, Math.ceil(count / rowCount));
  const pitch = area.width / perRow;
  const gap = Math.min(22, Math.max(8, pitch * 0.07));
  const paper = paperSize(windows, pitch - gap, count <= perRow ? MOST_VIEWS_HEIGHT : 620);
  const rows: StripRow[] = [];
  let top = area.y;
  for (let start = 0; start < count; start += perRow) {
    const panels = sheet.panels.slice(start, start + perRow);
    const next = sheet.panels[start + perRow] ?? null;
    const row = layOutRow({
      panels,
      next,
      top,
      left: area.x,
      pitch,
      paper,
      spare: spare / rowCount,
    });
    rows.push(row);
    top = row.bottom + ROW_GAP;
  }
  return { rows, windows, scale: paper.scale, bottom: rows.at(-1)?.bottom ?? area.y };
}

interface Paper {
  readonly scale: number;
  readonly beside: boolean;
  readonly width: number;
  readonly heights: Readonly<Record<View, number>>;
}

function paperSize(windows: StripLayout["windows"], room: number, most: number): Paper {
  const { side, front } = windows;
  const below = Math.min(room / side.width, (most - VIEW_GAP) / (side.height + front.height));
  const next = Math.min(
    (room - VIEW_GAP) / (2 * side.width),
    most / Math.max(side.height, front.height),
  );
  const beside = next > below * BESIDE_PREFERRED;
  const scale = beside ? next : below;
  return {
    scale,
    beside,
    width: side.width * scale,
    heights: { side: side.height * scale, front: front.height * scale },
  };
}

interface RowWish {
  readonly panels: readonly Panel[];
  readonly next: Panel | null;
  readonly top: number;
  readonly left: number;
  readonly pitch: number;
  readonly paper: Paper;
  readonly spare: number;
}

function layOutRow({ panels, next, top, left, pitch, paper, spare }: RowWish): StripRow {
  const cells = panels.map((panel, index) =>
    layOutCell(panel, left + (index + 0.5) * pitch, top, paper),
  );
  const { side, front } = paper.heights;
  const viewsBottom =
    top + LABEL_HEIGHT + (paper.beside ? Math.max(side, front) : side + VIEW_GAP + front);
  const y = viewsBottom + STEMS_HEIGHT + Math.min(40, spare * 0.25);
  const ruler: Ruler = {
    from: panels[0]?.frame ?? 1,
    to: panels.at(-1)?.frame ?? 1,
    left: left + pitch / 2,
    right: left + (panels.length - 0.5) * pitch,
    y,
  };
  const chart = { x: left, width: pitch * panels.length };
  const hips = {
    ...chart,
    y: y + NUMBERS_HEIGHT,
    height: HIPS_HEIGHT + Math.min(90, spare * 0.45),
  };
  const gaps = { ...chart, y: hips.y + hips.height + CHART_GAP, height: GAPS_HEIGHT };
  return { cells, ruler, hips, gaps, next, bottom: gaps.y + GAPS_HEIGHT };
}

function layOutCell(panel: Panel, middle: number, top: number, paper: Paper): Cell {
  const width = paper.beside ? 2 * paper.width + VIEW_GAP : paper.width;
  const x = middle - width / 2;
  const y = top + LABEL_HEIGHT;
  const [first, second] = VIEWS.map((view) => ({
    width: paper.width,
    height: paper.heights[view],
  }));
  const side = { x, y, ...(first ?? { width: 0, height: 0 }) };
  const front = {
    x: paper.beside ? x + paper.width + VIEW_GAP : x,
    y: paper.beside ? y : y + side.height + VIEW_GAP,
    ...(second ?? { width: 0, height: 0 }),
  };
  return { panel, views: { side, front }, label: { x, y: top + LABEL_HEIGHT - 10, width } };
}
