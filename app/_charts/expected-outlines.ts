import type { BandPoint } from "../../lib/gait";

/** A chart's inside. Units: pixels, y down; heights in leg lengths. */
export interface ChartEdges {
  readonly y: (height: number) => number;
  readonly top: number;
  readonly bottom: number;
}

const SLOT = 9; // px, half a slot's width

/**
 * Outlines of what a step is expected to do, as SVG points. Where the yardstick has a measured span
 * at every moment it is one band. Where it only says where single poses stand, above this one or
 * below that, each has a slot of its own: nothing is claimed about the frames between.
 */
export function expectedOutlines(
  points: readonly BandPoint[],
  xOfFrame: (frame: number) => number,
  { y, top, bottom }: ChartEdges,
): readonly string[] {
  const spans = points
    .toSorted((a, b) => a.frame - b.frame)
    .map(({ frame, low, high }) => ({
      x: xOfFrame(frame),
      upper: high === null ? top : y(high),
      lower: low === null ? bottom : y(low),
    }));
  const open = points.some(({ low, high }) => low === null || high === null);
  if (open || spans.length < 2) {
    return spans.map(({ x, upper, lower }) =>
      outline([
        [x - SLOT, upper],
        [x + SLOT, upper],
        [x + SLOT, lower],
        [x - SLOT, lower],
      ]),
    );
  }
  const along = spans.map(({ x, upper }): Corner => [x, upper]);
  const back = spans.map(({ x, lower }): Corner => [x, lower]).reverse();
  return [outline([...along, ...back])];
}

type Corner = readonly [x: number, y: number];

const outline = (corners: readonly Corner[]): string =>
  corners.map(([x, y]) => `${x.toFixed(1)},${y.toFixed(1)}`).join(" ");
