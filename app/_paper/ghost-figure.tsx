"use client";
import { bonesOf, PANEL, type ViewMarks } from "../../lib/body";
import type { InkPoint, Stroke } from "../../lib/ink";
import styles from "./ghost-figure.module.css";

export interface GhostFigureProps {
  /** The figure's marks, panel units; null draws no figure. */
  readonly marks: ViewMarks | null;
  /** Strokes that would come along, drawn as they run. */
  readonly ink?: readonly Stroke[];
  /** The paper's width, CSS pixels. */
  readonly width: number;
  /** `to-be` is dashed: not done yet. `to-redraw` is done, and the ink does not follow yet. */
  readonly look: "to-be" | "to-redraw";
}

const SMALL = 200; // CSS pixels across: dashes have to be short there

/** A figure's limbs over what is drawn on a paper. For the eye: what it means is said in words elsewhere. */
export function GhostFigure({ marks, ink = [], width, look }: GhostFigureProps) {
  return (
    <svg
      className={styles.ghost}
      viewBox={`0 0 ${PANEL.width} ${PANEL.height}`}
      aria-hidden="true"
      focusable="false"
      data-small={width < SMALL}
      data-look={look}
      data-ghost={look === "to-be" ? "" : undefined}
    >
      {ink.length > 0 && (
        <path className={styles.ink} d={ink.map(({ points }) => wayOf(points)).join("")} />
      )}
      {marks !== null &&
        bonesOf(marks).map(({ from, to, side, start, end }) => (
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

/** The middle of a stroke as a path; a dot is a line to where it began. */
function wayOf(points: readonly InkPoint[]): string {
  const ways = points.map(([x, y], index) => `${index === 0 ? "M" : "L"}${x} ${y}`);
  return points.length === 1 ? `${ways[0]}h0` : ways.join("");
}
