import { PANEL } from "../../lib/body";

/** The pixels behind one view of a panel. */
export interface BitmapSize {
  readonly width: number;
  readonly height: number;
  /** Device pixels a panel unit. */
  readonly scale: number;
}

/** Some browsers leave a larger canvas empty without saying so. */
const MOST_PIXELS = 16_000_000;

/**
 * How many pixels a paper needs to be as sharp as the screen.
 *
 * Units:   CSS pixels, device pixels a CSS pixel → device pixels
 *
 * @param mostPixels what all of it may take; a larger paper becomes softer, never empty
 */
export function bitmapSize(
  cssWidth: number,
  devicePixelRatio: number,
  mostPixels = MOST_PIXELS,
): BitmapSize {
  const wanted = Math.max(1, cssWidth * devicePixelRatio);
  const most = Math.sqrt((mostPixels * PANEL.width) / PANEL.height);
  const width = Math.max(1, Math.round(Math.min(wanted, most)));
  const scale = width / PANEL.width;
  return { width, height: Math.round(PANEL.height * scale), scale };
}
