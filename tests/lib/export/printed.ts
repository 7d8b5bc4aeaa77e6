import {
  layOutPages,
  measureShipped,
  ONE_PAGE,
  type PageChoice,
  pageSvg,
} from "../../../lib/export";
import type { HandedSheet } from "../../../lib/sheet";
import { reviewOf } from "./drawn-sheet";

export const DATE = "24 November 2025";

/** What a sheet's print is laid out from, on one page unless a paper is chosen. */
export function wishFor(sheet: HandedSheet, page: PageChoice = ONE_PAGE) {
  return { sheet, review: reviewOf(sheet), date: DATE, measure: measureShipped, page };
}

/** The pages of a sheet as SVG files. */
export function printed(sheet: HandedSheet, page: PageChoice = ONE_PAGE): readonly string[] {
  const wish = wishFor(sheet, page);
  return layOutPages(wish).map((layout) => pageSvg(layout, wish));
}
