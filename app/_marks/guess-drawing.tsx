"use client";
import { memo } from "react";
import { type JointName, markOf, PANEL, type ViewMarks } from "../../lib/body";
import { placed } from "./figure-painter";
import { markRadius } from "./grip";
import { sideOfJoint } from "./joint-side";
import styles from "./marks.module.css";
import { signPath } from "./sign-path";

export interface GuessDrawingProps {
  /** All that is guessed and not marked yet. */
  readonly guesses: ViewMarks;
  /** The one that is asked for now. */
  readonly prompted: JointName;
  /** The paper's width in CSS pixels. */
  readonly width: number;
}

const LOUDER = 1.9; // of a mark's size: the one that is asked for is found at a glance

/** Where joints would go, faintly, the one that is asked for ringed. */
export const GuessDrawing = memo(function GuessDrawing(props: GuessDrawingProps) {
  const { guesses, prompted, width } = props;
  const radius = (markRadius(width) * PANEL.width) / width; // panel units
  const joints = Object.keys(guesses) as JointName[];
  return (
    <svg
      className={styles.drawing}
      viewBox={`0 0 ${PANEL.width} ${PANEL.height}`}
      aria-hidden="true"
      focusable="false"
    >
      {joints.map((joint) => {
        const mark = markOf(guesses, joint);
        const asked = joint === prompted;
        if (mark === null) return null;
        const side = sideOfJoint(joint);
        return (
          <g key={joint} className={styles.guess} data-side={side} data-asked={asked}>
            <g transform={placed(mark)}>
              {asked && <path className={styles.ring} d={signPath(side, LOUDER * radius)} />}
              <path className={styles.spot} d={signPath(side, asked ? radius / 3 : radius / 2)} />
            </g>
          </g>
        );
      })}
    </svg>
  );
});
