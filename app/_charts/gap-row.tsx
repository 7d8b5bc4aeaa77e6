"use client";
import { memo, useId } from "react";
import type { GapCell } from "../../lib/gait";
import { useReview, useSheet } from "../_room";
import { charts } from "../_words";
import { CalmLine } from "./calm-line";
import { ChartFrame } from "./chart-frame";
import { ChartPicture } from "./chart-picture";
import styles from "./charts.module.css";
import { type GapBox, gapBoxes } from "./gap-boxes";
import { GapTable } from "./gap-table";
import { gapWording } from "./gap-words";

export interface GapRowProps {
  /** Where a frame stands on the ruler, pixels from the row's left edge. */
  readonly xOfFrame: (frame: number) => number;
  /** Pixels. */
  readonly width: number;
}

const HEIGHT = 26;

const NO_GAPS: readonly GapCell[] = [];

/** Frames between neighbouring panels, on the ruler's own scale. */
export const GapRow = memo(function GapRow({ xOfFrame, width }: GapRowProps) {
  const gaps = useReview()?.gapRow ?? NO_GAPS;
  const panels = useSheet((sheet) => sheet.panels);
  const frames = new Map(panels.map(({ id, frame }) => [id, frame]));
  const frameOf = (panel: string) => frames.get(panel);
  const boxes = gapBoxes({ gaps, frameOf, xOfFrame, wording: gapWording });
  return (
    <ChartFrame
      name={charts.gaps}
      title={charts.gapsTitle}
      width={width}
      height={HEIGHT}
      table={boxes.length === 0 ? null : <GapTable boxes={boxes} />}
    >
      {boxes.length === 0 ? (
        <CalmLine empty={charts.gapsEmpty} />
      ) : (
        <GapDrawing boxes={boxes} width={width} />
      )}
    </ChartFrame>
  );
});

interface GapDrawingProps {
  readonly boxes: readonly GapBox[];
  readonly width: number;
}

function GapDrawing({ boxes, width }: GapDrawingProps) {
  const hatchId = useId();
  const inOrder = boxes.map(({ frames }) => frames).join(", ");
  const uneven = boxes.filter(({ level }) => level !== null).length;
  return (
    <ChartPicture
      title={charts.gapsTitle}
      summary={charts.gapsSummary(inOrder, uneven)}
      width={width}
      height={HEIGHT}
    >
      <defs>
        <pattern id={hatchId} width="6" height="6" patternUnits="userSpaceOnUse">
          <path className={styles.hatch} d="M-1.5 1.5 1.5-1.5M0 6 6 0M4.5 7.5 7.5 4.5" />
        </pattern>
      </defs>
      {boxes.map((box) => (
        <Box key={box.key} box={box} hatch={`url(#${hatchId})`} />
      ))}
    </ChartPicture>
  );
}

function Box({ box, hatch }: { readonly box: GapBox; readonly hatch: string }) {
  const { left, width, level, text } = box;
  const size = { x: left, y: 1, width, height: HEIGHT - 2, rx: Math.min(4, width / 2) };
  return (
    <g className={styles.gap} data-level={level}>
      <rect {...size} />
      {level !== null && <rect {...size} style={{ fill: hatch }} />}
      <text x={left + width / 2} y={HEIGHT / 2 + 5} textAnchor="middle">
        {text}
      </text>
    </g>
  );
}
