import { SIDES, type Side } from "../../lib/body";
import type { FootSpan, FootState } from "../../lib/gait";

/** One span of one foot on the chart. Units: pixels of the chart, y down; frames. */
export interface FootfallCell {
  readonly key: string;
  readonly side: Side;
  readonly panel: string;
  readonly from: number;
  readonly to: number;
  /** Null where it cannot be told; `needs` then says what is missing. */
  readonly state: FootState | null;
  readonly needs: string | null;
  readonly x: number;
  readonly y: number;
  readonly width: number;
}

/** A foot's lane: tall enough to be pressed. */
export const LANE_PX = 24;
const TOP_PX = 2;
export const FOOTFALLS_PX = 2 * TOP_PX + 2 * LANE_PX;

/** Top of a foot's lane. Left lies over right. */
export function laneY(side: Side): number {
  return TOP_PX + SIDES.indexOf(side) * LANE_PX;
}

/** Lays footfalls out on the ruler's frames: left cells, then right, each along the frames. */
export function footfallCells(
  spans: readonly FootSpan[],
  xOfFrame: (frame: number) => number,
): readonly FootfallCell[] {
  return spans.map(({ side, panel, from, to, foot }) => {
    const x = xOfFrame(from);
    return {
      key: `${side} ${panel} ${from}`,
      side,
      panel,
      from,
      to,
      state: foot.kind === "value" ? foot.state : null,
      needs: foot.kind === "value" ? null : foot.needs,
      x,
      y: laneY(side),
      width: xOfFrame(to) - x,
    };
  });
}
