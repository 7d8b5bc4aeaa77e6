import type { Review } from "../../lib/gait";
import type { Sheet } from "../../lib/sheet";
import type { handover } from "../_words";
import { fetchPress } from "./fetch-press";
import { fetchFontFaces } from "./font-faces";
import { makePng } from "./make-png";

export type PrintFormat = keyof typeof handover.formats;
export type PrintStage = keyof typeof handover.making;

/** Page width in pixels, and what kind of file; SVG keeps the page's own width. */
const FORMATS: Readonly<Record<PrintFormat, { readonly width: number; readonly png: boolean }>> = {
  "png-1920": { width: 1920, png: true },
  "png-3840": { width: 3840, png: true },
  svg: { width: 1920, png: false },
};

export interface PrintJob {
  readonly sheet: Sheet;
  readonly review: Review;
  /** The day, as the reader writes it. */
  readonly date: string;
  readonly signal: AbortSignal;
  readonly onStage: (stage: PrintStage) => void;
}

/** The annotated sheet as SVG text, its typeface within. Errors: as `printSheet`. */
export async function sheetPicture(job: PrintJob, width = 1920): Promise<string> {
  const { sheet, review, date, signal, onStage } = job;
  onStage("layout");
  const { sheetSvg, embedFonts } = await fetchPress();
  signal.throwIfAborted();
  const svg = sheetSvg(sheet, review, { width, date });
  onStage("fonts");
  return embedFonts(svg, await fetchFontFaces(signal));
}

/**
 * The annotated sheet as a file to be handed over.
 *
 * Errors:  PrintError; AbortError when it was stopped
 */
export async function printSheet(job: PrintJob, format: PrintFormat): Promise<Blob> {
  const { width, png } = FORMATS[format];
  const svg = await sheetPicture(job, width);
  if (!png) return new Blob([svg], { type: "image/svg+xml" });
  job.onStage("picture");
  return makePng(svg, width, job.signal);
}

export function extensionOf(format: PrintFormat): string {
  return FORMATS[format].png ? ".png" : ".svg";
}
