"use client";
import { memo } from "react";
import { bonesOf, PANEL } from "../../lib/body";
import type { InkPoint } from "../../lib/ink";
import { marksAfter } from "../../lib/sheet";
import { type LayerProps, useWorkspace } from "../_workspace";
import styles from "./pass-on.module.css";
import { usePlan } from "./use-plan";

/** What is about to be passed on to this paper, dashed over what is there. */
export const GhostLayer = memo(function GhostLayer(props: LayerProps) {
  const asked = useWorkspace(({ passOn, panel }) => passOn !== null && panel === props.panel.id);
  return asked && props.mayDraw ? <Ghost {...props} /> : null;
});

function Ghost({ panel, view, width }: LayerProps) {
  const shown = usePlan();
  if (shown === null || shown.plan.kind !== "passing" || shown.plan.to !== panel.id) return null;
  const { marks, ink } = shown.plan;
  const touched = Object.keys(marks[view]).length > 0;
  const strokes = ink.filter((stroke) => stroke.view === view);
  if (!touched && strokes.length === 0) return null;
  const figure = marksAfter(panel.marks, marks)[view];
  const small = width < SMALL;
  return (
    <svg
      className={styles.ghost}
      viewBox={`0 0 ${PANEL.width} ${PANEL.height}`}
      aria-hidden="true"
      focusable="false"
      data-small={small}
      data-ghost
    >
      {strokes.length > 0 && (
        <path className={styles.ink} d={strokes.map(({ points }) => wayOf(points)).join("")} />
      )}
      {touched &&
        bonesOf(figure).map(({ from, to, side, start, end }) => (
          <g key={`${from} ${to}`}>
            <line className={styles.halo} x1={start.x} y1={start.y} x2={end.x} y2={end.y} />
            <line
              className={styles.bone}
              data-side={side}
              x1={start.x}
              y1={start.y}
              x2={end.x}
              y2={end.y}
            />
          </g>
        ))}
    </svg>
  );
}

const SMALL = 200; // CSS pixels across: dashes have to be short there

/** The middle of a stroke as a path; a dot is a line to where it began. */
function wayOf(points: readonly InkPoint[]): string {
  const ways = points.map(([x, y], index) => `${index === 0 ? "M" : "L"}${x} ${y}`);
  return points.length === 1 ? `${ways[0]}h0` : ways.join("");
}
