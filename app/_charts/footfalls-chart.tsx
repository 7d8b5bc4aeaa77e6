"use client";
import { memo } from "react";
import { useReview } from "../_room";
import { charts } from "../_words";
import { CalmLine } from "./calm-line";
import { ChartFrame } from "./chart-frame";
import { FOOTFALLS_PX, footfallCells } from "./footfall-cells";
import { FootfallsButtons } from "./footfalls-buttons";
import { FootfallsDrawing } from "./footfalls-drawing";
import { FootfallsTable } from "./footfalls-table";

export interface FootfallsChartProps {
  /** Where a frame stands on the ruler, pixels from the chart's left edge. */
  readonly xOfFrame: (frame: number) => number;
  /** Pixels. */
  readonly width: number;
}

/** Which foot is down when, under the ruler: a lane a foot. */
export const FootfallsChart = memo(function FootfallsChart({
  xOfFrame,
  width,
}: FootfallsChartProps) {
  const cells = footfallCells(useReview()?.footfalls ?? [], xOfFrame);
  const table = <FootfallsTable cells={cells} />;
  return (
    <ChartFrame
      name={charts.footfalls}
      title={charts.footfallsTitle}
      width={width}
      height={FOOTFALLS_PX}
      table={cells.length === 0 ? null : table}
    >
      {cells.length === 0 ? (
        <CalmLine empty={charts.footfallsEmpty} />
      ) : (
        <>
          <FootfallsDrawing cells={cells} width={width} />
          <FootfallsButtons cells={cells} />
        </>
      )}
    </ChartFrame>
  );
});
