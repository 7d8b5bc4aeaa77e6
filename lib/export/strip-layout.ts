import { VIEWS, type View } from "../geometry";
import type { Panel } from "../sheet";
import {
  CHART_GAP,
  FOOTFALLS_HEIGHT,
  GAPS_HEIGHT,
  heightBesides,
  LABEL_HEIGHT,
  ROW_GAP,
  type RowNeeds,
  rowHeights,
  VIEW_GAP,
} from "./row-heights";
import { type Ruler, rulerX } from "./ruler";
import type { Box } from "./shapes";
import type { StripPlan } from "./strip-plan";

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
  readonly footfalls: Box;
  readonly gaps: Box;
  /** The first panel of the next row, whose gap is told at the end of this one. */
  readonly next: Panel | null;
  readonly bottom: number;
}

/** The rows of one page, and how large their papers are. */
export interface StripLayout {
  readonly rows: readonly StripRow[];
  /** What is seen of each view, panel units. */
  readonly windows: Readonly<Record<View, Box>>;
  /** Page units a panel unit. */
  readonly scale: number;
  readonly bottom: number;
}

/** What the rows of one page are laid out from. */
export interface StripWish {
  readonly plan: StripPlan;
  readonly windows: StripLayout["windows"];
  /** Index of the page within the plan. */
  readonly page: number;
  readonly area: Omit<Box, "height">;
  readonly needs: RowNeeds;
  /** Height that each row may take beyond its least, for its stems and charts. */
  readonly spare: number;
}

/** A row of fewer panels hangs this much wider than the fullest, at most, to fill the page. */
const MOST_SPREAD = 1.5;

/** What a strip without panels takes, to say so. */
const EMPTY_HEIGHT = 110;

/**
 * Lays out the rows of one page. The ruler runs from the middle of a row's first panel to that of its
 * last: an even timing hangs straight, an uneven one leans.
 *
 * Units:   page units
 */
export function layOutStrip(wish: StripWish): StripLayout {
  const { plan, windows, page, area } = wish;
  const rows: StripRow[] = [];
  const panelRows = plan.pages[page] ?? [];
  const later = plan.pages.slice(page + 1).flat(2);
  let top = area.y;
  panelRows.forEach((panels, index) => {
    const next = panelRows[index + 1]?.[0] ?? later[0] ?? null;
    const row = layOutRow(wish, panels, next, top);
    rows.push(row);
    top = row.bottom + ROW_GAP;
  });
  return { rows, windows, scale: plan.scale, bottom: rows.at(-1)?.bottom ?? area.y + EMPTY_HEIGHT };
}

/** How high the rows of a page are without anything spare. Units: page units. */
export function stripHeight({ plan, windows, page, needs }: Omit<StripWish, "area" | "spare">) {
  const rows = plan.pages[page]?.length ?? 0;
  if (rows === 0) return 0;
  const one = heightBesides(rowHeights(needs, 0)) + viewsHeight(plan, windows);
  return rows * one + (rows - 1) * ROW_GAP;
}

function viewsHeight({ beside, scale }: StripPlan, { side, front }: StripLayout["windows"]) {
  return beside
    ? Math.max(side.height, front.height) * scale
    : (side.height + front.height) * scale + VIEW_GAP;
}

function layOutRow(
  { plan, windows, area, needs, spare }: StripWish,
  panels: readonly Panel[],
  next: Panel | null,
  top: number,
): StripRow {
  const pitch = Math.min(area.width / panels.length, (MOST_SPREAD * area.width) / plan.perRow);
  const { stems, numbers, hips } = rowHeights(needs, spare);
  const cells = panels.map((panel, index) =>
    layOutCell(panel, area.x + (index + 0.5) * pitch, top, plan, windows),
  );
  const y = top + LABEL_HEIGHT + viewsHeight(plan, windows) + stems;
  const ruler: Ruler = {
    from: panels[0]?.frame ?? 1,
    to: panels.at(-1)?.frame ?? 1,
    left: area.x + pitch / 2,
    right: area.x + (panels.length - 0.5) * pitch,
    y,
  };
  const chart = { x: area.x, width: pitch * panels.length };
  const hipsBox = { ...chart, y: y + numbers, height: hips };
  const footfalls = {
    ...chart,
    y: hipsBox.y + hips + CHART_GAP,
    height: FOOTFALLS_HEIGHT,
  };
  const gaps = { ...chart, y: footfalls.y + FOOTFALLS_HEIGHT + CHART_GAP, height: GAPS_HEIGHT };
  return { cells, ruler, hips: hipsBox, footfalls, gaps, next, bottom: gaps.y + GAPS_HEIGHT };
}

function layOutCell(
  panel: Panel,
  middle: number,
  top: number,
  { scale, beside }: StripPlan,
  windows: StripLayout["windows"],
): Cell {
  const paper = windows.side.width * scale;
  const width = beside ? 2 * paper + VIEW_GAP : paper;
  const x = middle - width / 2;
  const y = top + LABEL_HEIGHT;
  const [sideHeight = 0, frontHeight = 0] = VIEWS.map((view) => windows[view].height * scale);
  const side = { x, y, width: paper, height: sideHeight };
  const front = {
    x: beside ? x + paper + VIEW_GAP : x,
    y: beside ? y : y + sideHeight + VIEW_GAP,
    width: paper,
    height: frontHeight,
  };
  return { panel, views: { side, front }, label: { x, y: y - 10, width } };
}

/**
 * Where a frame stands in a row: on its ruler, and after the ruler's end on the way to the next row's
 * first panel, which is at the charts' edge.
 */
export function rowX({ ruler, gaps, next }: StripRow, frame: number): number {
  if (next === null || frame <= ruler.to || next.frame <= ruler.to) {
    return rulerX(ruler, Math.min(frame, ruler.to));
  }
  const share = Math.min(1, (frame - ruler.to) / (next.frame - ruler.to));
  return ruler.right + share * (gaps.x + gaps.width - ruler.right);
}
