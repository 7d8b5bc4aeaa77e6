import type { HipCurve } from "../../lib/gait";

/** Lowest and highest height that the chart shows. Leg lengths. */
export interface HeightRange {
  readonly low: number;
  readonly high: number;
}

const LEAST_SPAN = 0.08; // leg lengths: less would make a steady walk look wild
const AIR = 0.012; // leg lengths over the highest point and under the lowest

/** The range of the chart, from the heights that were read; null when none was. */
export function heightRange(points: HipCurve["points"]): HeightRange | null {
  const spans = points.flatMap(({ height }) =>
    height.kind === "value"
      ? [[height.value - height.plusMinus, height.value + height.plusMinus] as const]
      : [],
  );
  if (spans.length === 0) return null;
  const low = Math.min(...spans.map(([least]) => least));
  const high = Math.max(...spans.map(([, most]) => most));
  const air = Math.max(AIR, (LEAST_SPAN - (high - low)) / 2);
  return { low: low - air, high: high + air };
}

/** Steps between ruled heights, leg lengths: the first that leaves at most three is taken. */
const RULE_STEPS = [0.02, 0.05, 0.1, 0.2, 0.5] as const;
const MOST_RULES = 3;

/** Round heights within the range, to rule the chart at. */
export function heightRules({ low, high }: HeightRange): readonly {
  readonly height: number;
  readonly text: string;
}[] {
  const step = RULE_STEPS.find((size) => (high - low) / size <= MOST_RULES) ?? 1;
  const first = Math.ceil(low / step);
  const count = Math.max(0, Math.floor(high / step) - first + 1);
  return Array.from({ length: count }, (_, index) => {
    const height = (first + index) * step;
    return { height, text: height.toFixed(2) };
  });
}

/**
 * A height's place on the chart, y down. What lies outside the range is kept at its edge.
 *
 * Units:   leg lengths in, pixels out
 */
export function yOfHeight(
  height: number,
  { low, high }: HeightRange,
  { top, bottom }: { readonly top: number; readonly bottom: number },
): number {
  const share = Math.min(1, Math.max(0, (height - low) / (high - low)));
  return bottom - share * (bottom - top);
}
