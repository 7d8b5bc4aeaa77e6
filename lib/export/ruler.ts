import type { Frame } from "../motion";

/** A stretch of frames along a line of the page. Units: frames; x and y in the page's pixels. */
export interface Ruler {
  readonly from: Frame;
  readonly to: Frame;
  readonly left: number;
  readonly right: number;
  readonly y: number;
}

/** Where a frame stands on the ruler; the middle while the ruler holds one frame only. */
export function rulerX({ from, to, left, right }: Ruler, frame: Frame): number {
  if (to <= from) return (left + right) / 2;
  return left + ((frame - from) / (to - from)) * (right - left);
}

interface Wish {
  readonly at: number;
  readonly width: number;
}

/**
 * Moves labels apart along a line as little as keeps them from touching and within the line's
 * ends, their order kept. Where there is no room for all they stay in order and share the line.
 *
 * Shapes:  the middles wished for, ascending, with widths; the middles granted, in the same order
 */
export function spread(
  wishes: readonly Wish[],
  { left, right }: { readonly left: number; readonly right: number },
  gap: number,
): readonly number[] {
  const middles: number[] = [];
  let edge = left;
  for (const { at, width } of wishes) {
    const middle = Math.max(at, edge + width / 2);
    middles.push(middle);
    edge = middle + width / 2 + gap;
  }
  edge = right;
  for (let index = wishes.length - 1; index >= 0; index -= 1) {
    const width = wishes[index]?.width ?? 0;
    const middle = Math.min(middles[index] ?? 0, edge - width / 2);
    middles[index] = middle;
    edge = middle - width / 2 - gap;
  }
  return middles;
}
