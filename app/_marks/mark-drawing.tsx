"use client";
import { memo } from "react";
import {
  bonesOf,
  JOINTS,
  type JointName,
  type Mark,
  markOf,
  PANEL,
  type ViewMarks,
} from "../../lib/body";
import { placed } from "./figure-painter";
import { markRadius } from "./grip";
import { sideOfJoint } from "./joint-side";
import styles from "./marks.module.css";
import { signPath } from "./sign-path";

export interface MarkDrawingProps {
  /** All that is shown: what was marked and what follows from it. */
  readonly marks: ViewMarks;
  /** What was marked; the rest of `marks` is drawn as derived. */
  readonly own: ViewMarks;
  /** The paper's width in CSS pixels. */
  readonly width: number;
}

const RIM_FROM = 3; // px of radius; smaller marks are solid dots

/** The marks of one view and the limbs between them, for the eye. Marks keep their size on screen. */
export const MarkDrawing = memo(function MarkDrawing({ marks, own, width }: MarkDrawingProps) {
  const pixel = PANEL.width / width; // panel units a CSS pixel
  const radius = markRadius(width);
  return (
    <svg
      className={styles.drawing}
      viewBox={`0 0 ${PANEL.width} ${PANEL.height}`}
      aria-hidden="true"
      focusable="false"
      data-small={radius < RIM_FROM}
    >
      {bonesOf(marks).map(({ from, to, side, start, end }) => (
        <line
          key={`${from} ${to}`}
          className={styles.limb}
          data-bone={`${from} ${to}`}
          data-side={side}
          x1={start.x}
          y1={start.y}
          x2={end.x}
          y2={end.y}
        />
      ))}
      {JOINTS.map((joint) => {
        const mark = markOf(marks, joint);
        const derived = own[joint] === undefined;
        return mark === null ? null : (
          <Sign key={joint} joint={joint} mark={mark} radius={radius * pixel} derived={derived} />
        );
      })}
    </svg>
  );
});

interface SignProps {
  readonly joint: JointName;
  readonly mark: Mark;
  /** Panel units. */
  readonly radius: number;
  readonly derived: boolean;
}

const DERIVED = 0.7; // of a mark's size: it says less

/** Left round, right diamond, neither square; hollow and small where nobody marked it. */
function Sign({ joint, mark, radius, derived }: SignProps) {
  const side = sideOfJoint(joint);
  return (
    <path
      className={styles.sign}
      data-sign={joint}
      data-side={side}
      data-derived={derived}
      transform={placed(mark)}
      d={signPath(side, derived ? DERIVED * radius : radius)}
    />
  );
}
