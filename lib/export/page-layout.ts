import type { Review } from "../gait";
import type { Sheet } from "../sheet";
import { drawLegend } from "./draw-legend";
import { layOutNotes, type NotesLayout } from "./notes-layout";
import { type KeyedRemark, keyRemarks } from "./remark-keys";
import { layOutStrip, type StripLayout } from "./strip-layout";
import type { TextRun } from "./text-run";
import { layOutTitle } from "./title-band";
import type { MeasureText } from "./typeface";

/** How wide every page is laid out; a print is this page, scaled. Units: page pixels. */
export const PAGE_WIDTH = 1920;
/** Landscape sheets of the A series are √2 times as wide as high: no page is lower than that. */
export const MIN_PAGE_HEIGHT = Math.round(PAGE_WIDTH / Math.SQRT2);

const MARGIN = 64;
const GUTTER = 88; // px at the strip's left for "side", "front", "hips", "gaps"
const SECTION_GAP = 40;
/** How far over the legend's first line its rule runs. */
export const RULE_GAP = 28;

/** Where everything on the printed page stands. Units: page pixels. */
export interface PageLayout {
  readonly width: number;
  readonly height: number;
  readonly title: readonly TextRun[];
  /** The y of the rule under the title band. */
  readonly titleRule: number;
  readonly strip: StripLayout;
  readonly keyed: readonly KeyedRemark[];
  readonly notes: NotesLayout;
  readonly legend: { readonly left: number; readonly width: number; readonly y: number };
}

/** What is printed besides the sheet itself. */
export interface PageWish {
  readonly sheet: Sheet;
  readonly review: Review;
  /** The day, as the reader writes it; may be empty. */
  readonly date: string;
  readonly measure: MeasureText;
}

/** Lays out the annotated sheet, from the top down; the page is as high as it must be. */
export function layOutPage(wish: PageWish): PageLayout {
  const page = layOutWith(wish, 0);
  return layOutWith(wish, page.height - page.needed);
}

function layOutWith({ sheet, review, date, measure }: PageWish, spare: number) {
  const inner = { left: MARGIN, width: PAGE_WIDTH - 2 * MARGIN };
  const { yardstick } = review;
  const title = layOutTitle({ ...inner, head: sheet.head, yardstick, date, top: MARGIN, measure });
  const stripArea = { x: MARGIN + GUTTER, y: title.bottom + 26, width: inner.width - GUTTER };
  const strip = layOutStrip(sheet, stripArea, spare);
  const keyed = keyRemarks(review, sheet.panels);
  const top = strip.bottom + SECTION_GAP;
  const notes = layOutNotes({ ...inner, keyed, review, panels: sheet.panels, top, measure });
  const legendHeight = drawLegend(null, { ...inner, y: 0 }, measure);
  const needed = Math.ceil(notes.bottom + SECTION_GAP + RULE_GAP + legendHeight + MARGIN);
  const height = Math.max(MIN_PAGE_HEIGHT, needed);
  return {
    width: PAGE_WIDTH,
    height,
    needed,
    title: title.runs,
    titleRule: title.bottom,
    strip,
    keyed,
    notes,
    legend: { ...inner, y: height - MARGIN - legendHeight },
  };
}
