import type { BandPoint, HipCurve, Review } from "../../lib/gait";
import { type HeightRange, heightRange, yOfHeight } from "./hip-scale";

/** One panel's hips on the chart. Units: pixels of the chart, y down; heights in leg lengths. */
export interface HipDot {
  readonly panel: string;
  readonly frame: number;
  readonly height: number;
  readonly plusMinus: number;
  readonly x: number;
  readonly y: number;
  /** Ends of the whisker. */
  readonly top: number;
  readonly bottom: number;
  readonly remarked: boolean;
}

/** The hip chart, ready to draw. */
export interface HipLine {
  readonly range: HeightRange;
  readonly dots: readonly HipDot[];
  /** Points of the line, in runs: it breaks where hips are not marked. */
  readonly runs: readonly (readonly HipDot[])[];
  /** Outlines of the expected spans, one a step, as SVG points. */
  readonly bands: readonly string[];
}

export interface HipLineWish {
  readonly review: Pick<Review, "hipCurve" | "remarks">;
  readonly xOfFrame: (frame: number) => number;
  readonly top: number;
  readonly bottom: number;
}

/** Lays out the hip chart; null where no panel's hips could be read. */
export function hipLine({ review, xOfFrame, top, bottom }: HipLineWish): HipLine | null {
  const { points, bands } = review.hipCurve;
  const range = heightRange(points);
  if (range === null) return null;
  const y = (height: number) => yOfHeight(height, range, { top, bottom });
  const remarked = remarkedPanels(review.remarks);
  const dotOf = ({ panel, frame, height }: HipCurve["points"][number]): HipDot[] => {
    if (height.kind !== "value") return [];
    const { value, plusMinus } = height;
    const whisker = { top: y(value + plusMinus), bottom: y(value - plusMinus) };
    const at = { x: xOfFrame(frame), y: y(value) };
    const said = { panel, frame, height: value, plusMinus, remarked: remarked.has(panel) };
    return [{ ...said, ...at, ...whisker }];
  };
  return {
    range,
    dots: points.flatMap(dotOf),
    runs: runsOf(points).map((run) => run.flatMap(dotOf)),
    bands: bands.map((band) => outlineOf(band.points, xOfFrame, { y, top, bottom })),
  };
}

/** Panels whose hips draw a remark: where each is seen. */
function remarkedPanels(remarks: Review["remarks"]): ReadonlySet<string> {
  const seen = remarks.filter(({ check, level }) => check === "hip-order" && level !== "tidy");
  return new Set(seen.flatMap(({ panels }) => panels.slice(-1)));
}

function runsOf(points: HipCurve["points"]): HipCurve["points"][number][][] {
  const runs: HipCurve["points"][number][][] = [[]];
  for (const point of points) {
    if (point.height.kind === "value") runs.at(-1)?.push(point);
    else if ((runs.at(-1)?.length ?? 0) > 0) runs.push([]);
  }
  return runs.filter((run) => run.length > 0);
}

interface Edges {
  readonly y: (height: number) => number;
  readonly top: number;
  readonly bottom: number;
}

/** Along the upper bounds and back along the lower; a missing bound runs along the chart's edge. */
function outlineOf(
  points: readonly BandPoint[],
  xOfFrame: (frame: number) => number,
  { y, top, bottom }: Edges,
): string {
  const upper = points.map(({ frame, high }) => [xOfFrame(frame), high === null ? top : y(high)]);
  const lower = points.map(({ frame, low }) => [xOfFrame(frame), low === null ? bottom : y(low)]);
  return [...upper, ...lower.reverse()]
    .map(([x = 0, height = 0]) => `${x.toFixed(1)},${height.toFixed(1)}`)
    .join(" ");
}
