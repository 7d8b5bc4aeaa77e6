import { PANEL } from "../../lib/body";

/** One point of a pointer's way. Panel units; pressure 0..1. */
export interface PenSample {
  readonly x: number;
  readonly y: number;
  readonly pressure: number;
}

/** Ink may leave the paper by this share of its size; what lies further is brought to that edge. */
const MARGIN = 0.1;

/** Where a paper lies on screen while a stroke is drawn on it. */
export interface PaperBox {
  readonly left: number;
  readonly top: number;
  readonly width: number;
}

/**
 * A place on screen as a place on the paper.
 *
 * Units:   CSS pixels of the window → panel units
 */
export function toPaper(clientX: number, clientY: number, { left, top, width }: PaperBox) {
  const units = PANEL.width / width;
  return {
    x: within((clientX - left) * units, PANEL.width),
    y: within((clientY - top) * units, PANEL.height),
  };
}

function within(units: number, extent: number): number {
  return Math.min(extent * (1 + MARGIN), Math.max(-extent * MARGIN, units));
}
