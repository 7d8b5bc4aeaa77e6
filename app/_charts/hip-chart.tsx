"use client";
import { memo } from "react";
import { useReview } from "../_room";
import { charts } from "../_words";
import { ChartFrame } from "./chart-frame";
import styles from "./charts.module.css";
import { HipButtons } from "./hip-buttons";
import { HipDrawing } from "./hip-drawing";
import { hipLine } from "./hip-line";
import { HipTable } from "./hip-table";

export interface HipChartProps {
  /** Where a frame stands on the ruler, pixels from the chart's left edge. */
  readonly xOfFrame: (frame: number) => number;
  /** Pixels. */
  readonly width: number;
  readonly height: number;
}

const PAD = 12; // px kept over the highest whisker and under the lowest

/** The hips' height under the ruler, with what the yardstick expects of it. */
export const HipChart = memo(function HipChart({ xOfFrame, width, height }: HipChartProps) {
  const review = useReview();
  const line = hipLine({ review, xOfFrame, top: PAD, bottom: height - PAD });
  return (
    <ChartFrame name={charts.hips} width={width} height={height}>
      {line === null ? (
        <p className={styles.calm}>{charts.hipsEmpty}</p>
      ) : (
        <>
          <HipDrawing line={line} review={review} width={width} height={height} />
          <HipButtons dots={line.dots} />
          <HipTable review={review} />
        </>
      )}
    </ChartFrame>
  );
});
