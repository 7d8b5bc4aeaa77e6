import { breath } from "./breath";
import { drawPages, type PrintJob } from "./draw-pages";
import { makePng } from "./make-png";
import { FORMATS, type PrintFormat } from "./print-format";

/** One page of a print, as a file to be handed over. */
export interface PrintedFile {
  readonly blob: Blob;
  /** Counted from 1, of how many. */
  readonly number: number;
  readonly count: number;
}

/**
 * Prints a sheet page by page: each is handed out as soon as it is made, and nothing of the next one is
 * begun before it is asked for.
 *
 * @param only one page, counted from 1; all of them when null
 * Errors:  PrintError; AbortError when it was stopped
 */
export async function* printFiles(
  job: PrintJob,
  format: PrintFormat,
  only: number | null,
): AsyncGenerator<PrintedFile> {
  const { signal, onStep } = job;
  const print = await drawPages(job);
  const all = Array.from({ length: print.count }, (_, index) => index + 1);
  const { width } = FORMATS[format];
  for (const number of all.filter((page) => only === null || page === only)) {
    const step = { page: number, pages: print.count };
    onStep({ stage: "page", ...step });
    const svg = await print.draw(number);
    if (width === null) {
      yield { blob: new Blob([svg], { type: "image/svg+xml" }), number, count: print.count };
      continue;
    }
    onStep({ stage: "picture", ...step });
    await breath(signal);
    yield { blob: await makePng(svg, width, signal), number, count: print.count };
  }
}
