import type { KeptEntry } from "./kept-entries";
import { layOutOnePage } from "./lay-out-one-page";
import { layOutPaper } from "./lay-out-paper";
import type { NotesLayout } from "./notes-layout";
import type { PageFormat } from "./page-format";
import { type PageWish, pageFrame } from "./page-frame";
import type { Keyed, KeyedRemark } from "./remark-keys";
import type { StripLayout } from "./strip-layout";
import type { TextRun } from "./text-run";

/** Where everything on one printed page stands. Units: page units. */
export interface PageLayout {
  readonly format: PageFormat;
  readonly width: number;
  readonly height: number;
  /** Counted from 1, of how many. */
  readonly number: number;
  readonly count: number;
  readonly title: readonly TextRun[];
  /** The y of the rule under the title band. */
  readonly titleRule: number;
  readonly strip: StripLayout;
  /** The remarks still open and what is kept, of the whole sheet: the pages share their numbers. */
  readonly keyed: readonly KeyedRemark[];
  readonly kept: readonly Keyed<KeptEntry>[];
  readonly notes: NotesLayout;
  /** Null on all pages but the last. `y` is the middle of its first line. */
  readonly legend: LegendPlace | null;
}

export interface LegendPlace {
  readonly left: number;
  readonly width: number;
  readonly y: number;
}

/**
 * Lays out the annotated sheet, from the top down: title, strip, charts, notes, legend. On paper the strip
 * is broken into rows and pages so that as few pages as can be hold drawings that are large enough to be
 * read; without paper there is one page, as high as it must be.
 *
 * Units:   page units
 */
export function layOutPages(wish: PageWish): readonly PageLayout[] {
  const frame = pageFrame(wish);
  const { height } = frame.format;
  return height === null ? [layOutOnePage(frame)] : layOutPaper(frame, height);
}
