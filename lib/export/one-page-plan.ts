import type { Panel } from "../sheet";
import { breakRows } from "./break-rows";
import { gapOf, type PlanWish, type StripPlan, scaleWithin } from "./strip-plan";

const MOST_A_ROW = 12; // at 1920 units a panel of a longer row would be narrower than 130
const BESIDE_PREFERRED = 0.9; // a little smaller is well paid by a page of half the height
const MOST_VIEWS_HEIGHT = { alone: 800, stacked: 620 }; // units for both views of one row, of several

/**
 * The plan for one page that is as high as it must be: rows of up to twelve panels. The side view hangs
 * over the front view; where few panels leave room, beside it, if that makes the drawings larger.
 */
export function planOnePage(
  wish: Pick<PlanWish, "panels" | "windows" | "width">,
): StripPlan | null {
  const { panels, windows, width } = wish;
  if (panels.length === 0) return null;
  const rows = rowsOfAtMost(panels, MOST_A_ROW);
  const perRow = Math.max(...rows.map(({ length }) => length));
  const most = rows.length === 1 ? MOST_VIEWS_HEIGHT.alone : MOST_VIEWS_HEIGHT.stacked;
  const pitch = width / perRow;
  const within = (beside: boolean) => scaleWithin(windows, pitch - gapOf(pitch), most, beside);
  const [below, next] = [within(false), within(true)];
  const beside = next > below * BESIDE_PREFERRED;
  return { pages: [rows], perRow, beside, scale: beside ? next : below };
}

function rowsOfAtMost(panels: readonly Panel[], most: number): Panel[][] {
  let rowCount = Math.ceil(panels.length / most);
  let rows = breakRows(panels, rowCount);
  while (rows.some(({ length }) => length > most)) {
    rowCount += 1;
    rows = breakRows(panels, rowCount);
  }
  return rows;
}
