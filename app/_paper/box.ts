import type { Bounds } from "../../lib/ink";

/** The box that holds all of these; null for none. Units: theirs. */
export function boxOf(boxes: Iterable<Bounds>): Bounds | null {
  let whole: Bounds | null = null;
  for (const box of boxes) {
    whole =
      whole === null
        ? box
        : {
            left: Math.min(whole.left, box.left),
            top: Math.min(whole.top, box.top),
            right: Math.max(whole.right, box.right),
            bottom: Math.max(whole.bottom, box.bottom),
          };
  }
  return whole;
}

export function meet(one: Bounds, other: Bounds): boolean {
  return (
    one.left <= other.right &&
    other.left <= one.right &&
    one.top <= other.bottom &&
    other.top <= one.bottom
  );
}

/** A box in whole device pixels, as x, y, width, height: never smaller than the one it came from. */
export interface PixelBox {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

const SOFT_EDGE_PX = 2; // anti-aliasing, and the least width that thin strokes are given

/**
 * The pixels that a box of the paper touches.
 *
 * Units:   panel units → device pixels; `scale` is pixels a unit
 */
export function pixelBox(box: Bounds, scale: number): PixelBox {
  const x = Math.floor(box.left * scale) - SOFT_EDGE_PX;
  const y = Math.floor(box.top * scale) - SOFT_EDGE_PX;
  return {
    x,
    y,
    width: Math.ceil(box.right * scale) + SOFT_EDGE_PX - x,
    height: Math.ceil(box.bottom * scale) + SOFT_EDGE_PX - y,
  };
}
