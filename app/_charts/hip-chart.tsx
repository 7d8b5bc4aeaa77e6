"use client";
import { memo } from "react";
import { useReview } from "../_room";
import { charts } from "../_words";
import { CalmLine } from "./calm-line";
import { ChartFrame } from "./chart-frame";
import styles from "./charts.module.css";
import { HipButtons } from "./hip-buttons";
import { HipDrawing } from "./hip-drawing";
import { type HeightRule, hipLine } from "./hip-line";
import { HipTable } from "./hip-table";

export interface HipChartProps {
  /** Where a frame stands on the ruler, pixels from the chart's left edge. */
  readonly xOfFrame: (frame: number) => number;
  /** Pixels. */
  readonly width: number;
  readonly height: number;
}

/** The ruled heights in figures, at the left edge, which stay as the strip is moved. */
function HeightFigures({ rules }: { readonly rules: readonly HeightRule[] }) {
  return (
    <div className={styles.figures} aria-hidden="true">
      {rules.filter(isClear).map(({ height, text, y }) => (
        <span key={height} style={{ top: y }}>
          {text}
        </span>
      ))}
    </div>
  );
}

const NAME_PX = 33; // the chart's name takes the corner above this

const isClear = ({ y }: HeightRule): boolean => y > NAME_PX;

const PAD = 12; // px kept over the highest whisker and under the lowest

/** The hips' height under the ruler, with what the yardstick expects of it. */
export const HipChart = memo(function HipChart({ xOfFrame, width, height }: HipChartProps) {
  const review = useReview();
  const line =
    review === null ? null : hipLine({ review, xOfFrame, top: PAD, bottom: height - PAD });
  return (
    <ChartFrame
      name={charts.hips}
      title={charts.hipsTitle}
      width={width}
      height={height}
      table={review === null || line === null ? null : <HipTable review={review} />}
    >
      {review === null || line === null ? (
        <CalmLine empty={charts.hipsEmpty} />
      ) : (
        <>
          <HipDrawing line={line} review={review} width={width} height={height} />
          <HeightFigures rules={line.rules} />
          <HipButtons dots={line.dots} />
        </>
      )}
    </ChartFrame>
  );
});
