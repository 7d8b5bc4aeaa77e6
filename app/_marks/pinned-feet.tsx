"use client";
import { memo } from "react";
import { limbJoint, type Mark, markOf, PANEL, type Side } from "../../lib/body";
import type { LayerProps } from "../_workspace";
import { pinnedFeet } from "./dragged-pose";
import styles from "./marks.module.css";

const PARTS = ["ankle", "heel", "ball", "toe"] as const;
/** CSS pixels: how far the ground sign reaches beyond the sole, lies below it, and its strokes are apart. */
const SIGN = { beyond: 3, below: 3, stroke: 5 } as const;

/** Under every foot that a pull leaves where it is: ground, hatched. */
export const PinnedFeet = memo(function PinnedFeet(props: Omit<LayerProps, "mayDraw">) {
  const { panel, view, width } = props;
  const pixel = PANEL.width / width; // panel units a CSS pixel
  return (
    <svg
      className={styles.drawing}
      viewBox={`0 0 ${PANEL.width} ${PANEL.height}`}
      aria-hidden="true"
      focusable="false"
    >
      {pinnedFeet(panel, null).map((side) => {
        const foot = footOf(panel.marks[view], side);
        return foot.length === 0 ? null : (
          <path key={side} className={styles.pin} data-pin={side} d={hatched(foot, pixel)} />
        );
      })}
    </svg>
  );
});

function footOf(marks: LayerProps["panel"]["marks"]["side"], side: Side): Mark[] {
  return PARTS.flatMap((part) => {
    const mark = markOf(marks, limbJoint(side, part));
    return mark === null ? [] : [mark];
  });
}

function hatched(foot: readonly Mark[], pixel: number): string {
  const [beyond, below, stroke] = [SIGN.beyond * pixel, SIGN.below * pixel, SIGN.stroke * pixel];
  const across = foot.map(({ x }) => x);
  const from = Math.min(...across) - beyond;
  const to = Math.max(...across) + beyond;
  const y = Math.max(...foot.map((mark) => mark.y)) + below;
  const strokes = Math.max(2, Math.round((to - from) / stroke));
  const lines = Array.from({ length: strokes }, (_, nth) => {
    const x = from + ((to - from) * (nth + 1)) / strokes;
    return `M${x} ${y}l${-stroke} ${stroke}`;
  });
  return `M${from} ${y}H${to}${lines.join("")}`;
}
