import { drawPage } from "./draw-page";
import type { PageWish } from "./page-frame";
import type { PageLayout } from "./page-layout";
import { titleWords } from "./sheet-words";
import { SvgSurface } from "./svg-surface";

/**
 * One page as an SVG file, its text as text in the shipped family. On paper the file knows its size in
 * millimetres; the one page is a pixel a unit large.
 */
export function pageSvg(page: PageLayout, wish: PageWish): string {
  const { width, height, number, count, format } = page;
  const surface = new SvgSurface(width, height, format.millimetres);
  drawPage(surface, page, wish);
  const title = titleWords(wish.sheet.head);
  return surface.toSvg(count === 1 ? title : `${title}, page ${number} of ${count}`);
}
