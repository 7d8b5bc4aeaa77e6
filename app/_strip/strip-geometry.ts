import type { Frame } from "../../lib/motion";

/** A view is 720 × 1200 panel units: the paper keeps that shape at any size. */
export const PAPER_RATIO = 1200 / 720;

/** CSS pixels. */
export const STRIP = {
  gutter: 62, // where the rows' names and the play button stand
  tail: 24,
  gap: 8,
  header: 42,
  leastPaper: 72, // below this a pose cannot be read, and the strip scrolls instead
  mostPaper: 300, // at zoom 1: three panels need not fill a wall
  stems: 54,
  ruler: 44,
  shot: 18, // the row of the shot's own numbers, where it has some
  ghosts: 20, // the row of frames that feet would move to, while one looks at it
} as const;

export interface StripSpace {
  /** The window on the strip. */
  readonly width: number;
  /** What of its height the papers may take. */
  readonly height: number;
}

export interface StripGeometry {
  readonly paperWidth: number;
  readonly paperHeight: number;
  /** The whole strip's width. */
  readonly width: number;
  /** Left edge of the column at an index (from 0). */
  columnX(index: number): number;
  /** The middle of the column: where its stem leaves. */
  stemX(index: number): number;
  /** Where a frame stands on the ruler. */
  frameX(frame: Frame): number;
  /** The whole frame nearest to a place on the ruler, never before 1. */
  frameAt(x: number): Frame;
}

/**
 * Where everything on the strip stands. Panels hang in equal columns, their frames stand on the ruler
 * to scale; the first and last panel's stems are upright, so uneven timing shows as leaning stems.
 *
 * Units:   CSS pixels from the strip's left end; frames from 1
 */
export function stripGeometry(
  frames: readonly Frame[],
  space: StripSpace,
  zoom: number,
  /** The furthest frame that has to be on the ruler beside the panels' own. */
  reach = 0,
): StripGeometry {
  const columns = Math.max(1, frames.length);
  const { gutter, tail, gap } = STRIP;
  const byWidth = (space.width - gutter - tail - (columns - 1) * gap) / columns;
  const byHeight = (space.height - STRIP.header - gap) / 2 / PAPER_RATIO;
  const fits = Math.min(byWidth, byHeight, STRIP.mostPaper);
  const paperWidth = Math.max(STRIP.leastPaper, Math.floor(fits)) * zoom;
  const pitch = paperWidth + gap;
  const first = frames[0] ?? 1;
  const last = Math.max(reach, frames.at(-1) ?? first);
  const start = gutter + paperWidth / 2;
  // One panel, or all on one frame: a frame is then as wide as a third of a panel.
  const perFrame = last > first ? ((columns - 1) * pitch) / (last - first) : pitch / 3;
  return {
    paperWidth,
    paperHeight: paperWidth * PAPER_RATIO,
    width: gutter + columns * pitch - gap + tail,
    columnX: (index) => gutter + index * pitch,
    stemX: (index) => start + index * pitch,
    frameX: (frame) => start + (frame - first) * perFrame,
    frameAt: (x) => Math.max(1, Math.round(first + (x - start) / perFrame)),
  };
}
