import type { View } from "../geometry";
import type { Panel } from "../sheet";
import { breakRows } from "./break-rows";
import { heightBesides, ROW_GAP, type RowNeeds, rowHeights, VIEW_GAP } from "./row-heights";
import type { Box } from "./shapes";

type Windows = Readonly<Record<View, Pick<Box, "width" | "height">>>;

/** How a strip is broken into rows and pages, and how large its papers are. */
export interface StripPlan {
  /** The rows of each page. */
  readonly pages: readonly (readonly (readonly Panel[])[])[];
  /** Panels of the fullest row: all rows share its pitch. */
  readonly perRow: number;
  /** Whether the front view hangs beside the side view, not below it. */
  readonly beside: boolean;
  /** Page units a panel unit. */
  readonly scale: number;
}

/** What a plan is made for. Units: page units. */
export interface PlanWish {
  readonly panels: readonly Panel[];
  readonly windows: Windows;
  readonly width: number;
  /** The height that the rows of a page may take. */
  readonly room: (pages: StripPlan["pages"], page: number) => number;
  readonly needs: RowNeeds;
}

/** A plain figure, 840 panel units high, is then 25 mm high on paper. Source: our own choice */
const LEAST_SCALE = 0.15;
/** The strip in so many rows. */
type RowsOf = (rowCount: number) => readonly (readonly Panel[])[];

const ROWS_TRIED = 4; // a page: more would be smaller than the least scale on every paper

/**
 * The plan with the largest drawings for a strip on so many pages; null where there are fewer panels
 * than pages.
 */
function planOn(pages: number, wish: PlanWish, rowsOf: RowsOf): StripPlan | null {
  const { panels } = wish;
  if (panels.length === 0) return null;
  let best: StripPlan | null = null;
  const most = Math.min(panels.length, pages * ROWS_TRIED);
  for (let rowCount = pages; rowCount <= most; rowCount += 1) {
    const rows = rowsOf(rowCount);
    for (const beside of [false, true]) {
      const plan = planWith(intoPages(rows, pages), beside, wish);
      if (plan.scale > (best?.scale ?? 0)) best = plan;
    }
  }
  return best;
}

function planWith(pages: StripPlan["pages"], beside: boolean, wish: PlanWish): StripPlan {
  const { windows, width, room, needs } = wish;
  const perRow = Math.max(...pages.flat().map(({ length }) => length));
  const pitch = width / perRow;
  const besides = heightBesides(rowHeights(needs, 0));
  const heights = pages.map((rows, page) => {
    const gaps = (rows.length - 1) * ROW_GAP;
    return (room(pages, page) - gaps) / rows.length - besides;
  });
  const scale = scaleWithin(windows, pitch - gapOf(pitch), Math.min(...heights), beside);
  return { pages, perRow, beside, scale };
}

/** Rows dealt out to pages in order, as even as can be, the first pages the fuller ones. */
function intoPages<R>(rows: readonly R[], pages: number): (readonly R[])[] {
  const dealt: (readonly R[])[] = [];
  let at = 0;
  for (let page = 0; page < pages; page += 1) {
    const count = Math.ceil((rows.length - at) / (pages - page));
    dealt.push(rows.slice(at, at + count));
    at += count;
  }
  return dealt;
}

/** What stands between two papers of a row. */
export function gapOf(pitch: number): number {
  return Math.min(22, Math.max(8, pitch * 0.07));
}

/** The largest scale at which both views fit a cell. Units: page units a panel unit. */
export function scaleWithin(
  { side, front }: Windows,
  width: number,
  height: number,
  beside: boolean,
): number {
  return beside
    ? Math.min((width - VIEW_GAP) / (2 * side.width), height / Math.max(side.height, front.height))
    : Math.min(width / side.width, (height - VIEW_GAP) / (side.height + front.height));
}

/** The plan of a sheet without panels. */
export function emptyPlan(): StripPlan {
  return { pages: [], perRow: 1, beside: false, scale: 1 };
}

/** A plan, and whether each page has room for its own notes. */
export interface PlanChoice {
  readonly plan: StripPlan;
  readonly closed: boolean;
}

/** A strip seen at once is worth drawings this much smaller than on one page more. Source: our own choice */
const ONE_SIGHT = 0.85;

/**
 * The plans worth laying out, the best first: on the fewest pages on which the drawings
 * are large enough, and on one page more where the notes could not stand on the same. Empty only without
 * panels.
 */
export function choosePlans(
  wish: Omit<PlanWish, "room">,
  room: (closed: boolean) => PlanWish["room"],
): readonly PlanChoice[] {
  const known = new Map<number, readonly (readonly Panel[])[]>();
  const rowsOf: RowsOf = (count) => {
    const rows = known.get(count) ?? breakRows(wish.panels, count);
    known.set(count, rows);
    return rows;
  };
  const choices: PlanChoice[] = [];
  let enough = wish.panels.length;
  for (let pages = 1; pages <= enough; pages += 1) {
    for (const closed of [true, false]) {
      const plan = planOn(pages, { ...wish, room: room(closed) }, rowsOf);
      if (plan === null) continue;
      const large = plan.scale >= LEAST_SCALE;
      // Drawings that are too small are the last resort, after notes that run on to another page.
      if (!large && (closed || pages < wish.panels.length)) continue;
      choices.push({ plan, closed });
      enough = Math.min(enough, pages + 1);
    }
  }
  const worth = ({ plan }: PlanChoice) => plan.scale * ONE_SIGHT ** plan.pages.length;
  return choices.toSorted((one, other) => worth(other) - worth(one));
}
