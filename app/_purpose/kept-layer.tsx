"use client";
import { memo } from "react";
import { markOf, PANEL } from "../../lib/body";
import { useReview } from "../_room";
import type { LayerProps } from "../_workspace";
import { keptAt } from "./kept-at";
import styles from "./purpose.module.css";

const RING_PX = { least: 4, most: 9 } as const;
const RING_SHARE = 0.022; // of the paper's width

/** On the drawing: a ring about the joints of what is kept on purpose. The margin has it in words. */
export const KeptLayer = memo(function KeptLayer({ panel, view, width }: LayerProps) {
  const kept = keptAt(useReview(), panel.id);
  const spots = kept.flatMap(({ remark }) =>
    remark.spots.filter((spot) => spot.panel === panel.id && spot.view === view),
  );
  const joints = [...new Set(spots.flatMap((spot) => spot.joints))];
  if (joints.length === 0) return null;
  const pixel = PANEL.width / width;
  const radius = Math.min(RING_PX.most, Math.max(RING_PX.least, RING_SHARE * width)) * pixel;
  return (
    <svg
      className={styles.layer}
      viewBox={`0 0 ${PANEL.width} ${PANEL.height}`}
      aria-hidden="true"
      focusable="false"
      data-kept
    >
      {joints.map((joint) => {
        const mark = markOf(panel.marks[view], joint);
        return mark === null ? null : (
          <circle key={joint} cx={mark.x} cy={mark.y} r={radius} strokeWidth={1.8 * pixel} />
        );
      })}
    </svg>
  );
});
