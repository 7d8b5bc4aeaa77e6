import type { GapCell, Level } from "../../lib/gait";

/** One gap as a box under the ruler. Units: pixels from the chart's left edge. */
export interface GapBox {
  readonly key: string;
  readonly left: number;
  readonly width: number;
  readonly fromFrame: number;
  readonly toFrame: number;
  readonly frames: number;
  readonly expected: number | null;
  /** Of the remark on it; null where there is none. */
  readonly level: Level | null;
  /** What fits into the box, the fullest wording first. */
  readonly text: string;
}

const BETWEEN = 4; // px between two boxes
const LETTER = 6.6; // px: the mean of figures, brackets and space at 14 px, bold
const SIDES = 2; // px: a lone figure is wider than the mean

export interface GapBoxWish {
  readonly gaps: readonly GapCell[];
  readonly frameOf: (panel: string) => number | undefined;
  readonly xOfFrame: (frame: number) => number;
  readonly wording: (gap: GapCell) => readonly string[];
}

/** Lays the gaps out on the ruler's frames. Two panels on one frame leave no room for a box. */
export function gapBoxes({ gaps, frameOf, xOfFrame, wording }: GapBoxWish): readonly GapBox[] {
  return gaps.flatMap((gap): GapBox[] => {
    const fromFrame = frameOf(gap.from);
    const toFrame = frameOf(gap.to);
    if (fromFrame === undefined || toFrame === undefined) return [];
    const left = xOfFrame(fromFrame) + BETWEEN / 2;
    const width = xOfFrame(toFrame) - xOfFrame(fromFrame) - BETWEEN;
    if (!(width > 0)) return [];
    const { frames, expected, level } = gap;
    const text = wording(gap).find((words) => words.length * LETTER + SIDES <= width) ?? "";
    const key = `${gap.from} ${gap.to}`;
    const said = { key, fromFrame, toFrame, frames, expected, level, text };
    return [{ ...said, left, width }];
  });
}
