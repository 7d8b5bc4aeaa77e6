import type { PageChoice } from "../../lib/export";
import type { Review } from "../../lib/gait";
import type { Sheet } from "../../lib/sheet";
import { breath } from "./breath";
import { fetchPress } from "./fetch-press";
import { fetchFontFaces } from "./font-faces";
import type { PrintStep } from "./print-step";
import type { Day } from "./today";

/** What is printed, on what, and who is told how far it is. */
export interface PrintJob {
  readonly sheet: Sheet;
  readonly review: Review;
  readonly day: Day;
  readonly page: PageChoice;
  readonly signal: AbortSignal;
  readonly onStep: (step: PrintStep) => void;
}

/** A print that is laid out. Its pages are drawn one by one, when they are asked for. */
export interface Print {
  readonly count: number;
  /** One page, counted from 1, as SVG text with its typeface within; rests before and after. */
  draw(number: number): Promise<string>;
}

/**
 * Lays the annotated sheet out.
 *
 * Errors:  PrintError; AbortError when it was stopped
 */
export async function drawPages(job: PrintJob): Promise<Print> {
  const { sheet, review, day, page, signal, onStep } = job;
  onStep({ stage: "layout" });
  const press = await fetchPress();
  await breath(signal);
  const date = press.dayWords(day.year, day.month, day.day);
  const wish = { sheet, review, date, measure: press.measureShipped, page };
  const layouts = press.layOutPages(wish);
  onStep({ stage: "fonts" });
  const faces = await fetchFontFaces(signal);
  return {
    count: layouts.length,
    async draw(number) {
      const layout = layouts[number - 1];
      if (layout === undefined) throw new RangeError(`a print of ${layouts.length}, got ${number}`);
      await breath(signal);
      const svg = press.pageSvg(layout, wish);
      await breath(signal);
      return press.embedFonts(svg, faces);
    },
  };
}
