import { type Orientation, PAPERS, type PaperName } from "./paper";

/** What a sheet is printed on: a paper, or one page as high as it must be. */
export type PageChoice =
  | { readonly paper: PaperName; readonly orientation: Orientation }
  | { readonly paper: null };

/** One page, as high as it must be. */
export const ONE_PAGE: PageChoice = { paper: null };

/** The page that everything is laid out on. Units: page units, where nothing else is said. */
export interface PageFormat {
  readonly width: number;
  /** Null where the page is as high as it must be. */
  readonly height: number | null;
  readonly margin: number;
  /** Within the margin, at the foot, for the page's number. */
  readonly foot: number;
  /** At the strip's left, for the names of views and charts. */
  readonly gutter: number;
  /** How large the paper is; null where there is none. Units: mm. */
  readonly millimetres: { readonly width: number; readonly height: number } | null;
}

/**
 * A page unit on paper. Units: mm.
 * Source: our own choice: the smallest text, 12 units, is then 2.4 mm or 6.8 points high, and the
 * remarks' 16 units are 9 points
 */
export const UNIT_MM = 0.2;

/** How wide the one page is: a picture of it at this width has a pixel a unit. Units: page units. */
export const PAGE_WIDTH = 1920;

/** Landscape sheets of the A series are √2 times as wide as high: the one page is no lower. */
export const MIN_PAGE_HEIGHT = Math.round(PAGE_WIDTH / Math.SQRT2);

const PAPER_MARGIN_MM = 10; // common desk printers leave 3 to 6.4 mm bare; common practice, no source
const NUMBER_HEIGHT = 14; // page units
const NARROW = 1200; // page units: a narrower page spares its gutter

/** The page to lay out for a choice of paper. */
export function pageFormat(choice: PageChoice): PageFormat {
  if (choice.paper === null) {
    return { width: PAGE_WIDTH, height: null, margin: 64, foot: 0, gutter: 88, millimetres: null };
  }
  const upright = PAPERS[choice.paper];
  const size =
    choice.orientation === "portrait"
      ? { width: upright.width, height: upright.height }
      : { width: upright.height, height: upright.width };
  const width = size.width / UNIT_MM;
  return {
    width,
    height: size.height / UNIT_MM,
    margin: PAPER_MARGIN_MM / UNIT_MM,
    foot: NUMBER_HEIGHT,
    gutter: width < NARROW ? 74 : 84,
    millimetres: size,
  };
}
