import { type Hitch, hipRemarks } from "../../lib/export";
import type { HipCurve, Review } from "../../lib/gait";
import { expectedOutlines } from "./expected-outlines";
import { type HeightRange, heightRange, heightRules, yOfHeight } from "./hip-scale";

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

export interface HeightRule {
  readonly height: number;
  readonly text: string;
  readonly y: number;
}

/** The hip chart, ready to draw. */
export interface HipLine {
  readonly range: HeightRange;
  readonly dots: readonly HipDot[];
  /** Points of the line, in runs: it breaks where hips are not marked. */
  readonly runs: readonly (readonly HipDot[])[];
  /** Where the hips hitch: from dot to dot. */
  readonly hitches: readonly (readonly [HipDot, HipDot])[];
  /** Outlines of what is expected, as SVG points. */
  readonly bands: readonly string[];
  /** Heights that the chart is ruled at. */
  readonly rules: readonly HeightRule[];
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
  const { panels: remarked, hitches } = hipRemarks(review.remarks);
  const dotOf = ({ panel, frame, height }: HipCurve["points"][number]): HipDot[] => {
    if (height.kind !== "value") return [];
    const { value, plusMinus } = height;
    const whisker = { top: y(value + plusMinus), bottom: y(value - plusMinus) };
    const at = { x: xOfFrame(frame), y: y(value) };
    const said = { panel, frame, height: value, plusMinus, remarked: remarked.has(panel) };
    return [{ ...said, ...at, ...whisker }];
  };
  const dots = points.flatMap(dotOf);
  return {
    range,
    dots,
    hitches: hitches.flatMap((hitch) => hitchOn(dots, hitch)),
    runs: runsOf(points).map((run) => run.flatMap(dotOf)),
    bands: bands.flatMap((band) => expectedOutlines(band.points, xOfFrame, { y, top, bottom })),
    rules: heightRules(range).map(({ height, text }) => ({ height, text, y: y(height) })),
  };
}

/** A hitch as the two dots between which it is; empty where one is not marked. */
function hitchOn(dots: readonly HipDot[], { from, to }: Hitch): (readonly [HipDot, HipDot])[] {
  const [start, end] = [from, to].map((id) => dots.find(({ panel }) => panel === id));
  return start === undefined || end === undefined ? [] : [[start, end]];
}

function runsOf(points: HipCurve["points"]): HipCurve["points"][number][][] {
  const runs: HipCurve["points"][number][][] = [[]];
  for (const point of points) {
    if (point.height.kind === "value") runs.at(-1)?.push(point);
    else if ((runs.at(-1)?.length ?? 0) > 0) runs.push([]);
  }
  return runs.filter((run) => run.length > 0);
}
