import type { Review } from "../gait";
import type { Sheet } from "../sheet";
import { drawLegend } from "./draw-legend";
import { type KeptEntry, keptEntries } from "./kept-entries";
import { type LegendId, legendOf } from "./legend-of";
import type { Note } from "./note";
import { notesOf } from "./notes";
import { type Columns, columnsIn } from "./notes-layout";
import { ONE_PAGE, type PageChoice, type PageFormat, pageFormat } from "./page-format";
import { type Keyed, type KeyedRemark, keyKept, keyRemarks } from "./remark-keys";
import type { RowNeeds } from "./row-heights";
import type { StripLayout } from "./strip-layout";
import { layOutSlimTitle, layOutTitle, type TitleBand } from "./title-band";
import type { MeasureText } from "./typeface";
import { viewWindows } from "./view-window";

/** What is printed, and on what. */
export interface PageWish {
  readonly sheet: Sheet;
  readonly review: Review;
  /** The day, in words; may be empty. */
  readonly date: string;
  readonly measure: MeasureText;
  /** One page, as high as it must be, unless a paper is chosen. */
  readonly page?: PageChoice;
}

/** What every page of a print is laid out from. Units: page units. */
export interface PageFrame {
  readonly wish: PageWish;
  readonly format: PageFormat;
  readonly inner: { readonly left: number; readonly width: number };
  readonly windows: StripLayout["windows"];
  readonly needs: RowNeeds;
  readonly keyed: readonly KeyedRemark[];
  readonly kept: readonly Keyed<KeptEntry>[];
  readonly notes: readonly Note[];
  readonly columns: Columns;
  readonly title: TitleBand;
  readonly slimTitle: TitleBand;
  readonly legend: ReadonlySet<LegendId>;
  /** From the middle of the legend's first line to its foot. */
  readonly legendHeight: number;
}

export const SECTION_GAP = 28;
/** How far under a title's rule the strip or the notes begin. */
export const TITLE_GAP = 16;
/** How far over the legend's first line its rule runs. */
export const RULE_GAP = 22;

/** Reads and measures what all pages share. */
export function pageFrame(wish: PageWish): PageFrame {
  const { sheet, review, date, measure, page = ONE_PAGE } = wish;
  const format = pageFormat(page);
  const inner = { left: format.margin, width: format.width - 2 * format.margin };
  const keyed = keyRemarks(review, sheet.panels);
  const kept = keyKept(keptEntries(review.kept), sheet.panels, keyed.length);
  const legend = legendOf(sheet, review);
  const columns = columnsIn(inner.width);
  const { width } = columns;
  const { yardstick } = review;
  const band = { ...inner, head: sheet.head, yardstick, date, top: format.margin, measure };
  return {
    wish,
    format,
    inner,
    windows: viewWindows(sheet),
    needs: {
      shotNumbers: sheet.head.firstFrame !== undefined,
      scarce: format.height !== null,
    },
    keyed,
    kept,
    notes: notesOf({ sheet, review, keyed, kept, width, measure }),
    columns,
    title: layOutTitle(band),
    slimTitle: layOutSlimTitle(band),
    legend,
    legendHeight: drawLegend(null, { ...inner, y: 0 }, legend, measure),
  };
}
