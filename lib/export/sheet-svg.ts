import type { Review } from "../gait";
import { requirePositive } from "../require";
import type { Sheet } from "../sheet";
import { drawSheet } from "./draw-sheet";
import { layOutPage, PAGE_WIDTH } from "./page-layout";
import { SvgSurface } from "./svg-surface";
import { type MeasureText, measureShipped } from "./typeface";

/** How a sheet is printed. */
export interface PrintOptions {
  /** How wide the picture is, CSS pixels; its height follows. */
  readonly width: number;
  /** The day, as the reader writes it; may be empty. */
  readonly date: string;
  /** How texts are measured; by the shipped family's own table unless handed in. */
  readonly measure?: MeasureText;
}

/**
 * The annotated sheet as one SVG file, its text as text in the shipped family.
 *
 * Units:   `width` in CSS pixels
 * Errors:  RangeError unless the width is above 0
 */
export function sheetSvg(sheet: Sheet, review: Review, options: PrintOptions): string {
  const { width, date, measure = measureShipped } = options;
  requirePositive("sheetSvg", { width });
  const wish = { sheet, review, date, measure };
  const page = layOutPage(wish);
  const scale = width / PAGE_WIDTH;
  const surface = new SvgSurface(width, Math.round(page.height * scale));
  surface.scale(scale, scale);
  drawSheet(surface, page, wish);
  return surface.toSvg(sheet.head.title.trim() === "" ? "Untitled walk" : sheet.head.title);
}
