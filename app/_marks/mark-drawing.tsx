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
import { markRadius } from "./grip";
import { sideOfJoint } from "./joint-side";
import styles from "./marks.module.css";

export interface MarkDrawingProps {
  readonly marks: ViewMarks;
  /** The paper's width in CSS pixels. */
  readonly width: number;
}

const RIM_FROM = 3; // px of radius; smaller marks are solid dots

/** The marks of one view and the limbs between them, for the eye. Marks keep their size on screen. */
export const MarkDrawing = memo(function MarkDrawing({ marks, width }: MarkDrawingProps) {
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
          data-side={side}
          x1={start.x}
          y1={start.y}
          x2={end.x}
          y2={end.y}
        />
      ))}
      {JOINTS.map((joint) => {
        const mark = markOf(marks, joint);
        return mark === null ? null : (
          <Sign key={joint} joint={joint} mark={mark} radius={radius * pixel} />
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
}

const DIAMOND = 1.3; // a diamond, and
const SQUARE = 0.85; // a square, that look as large as a circle of radius 1

/** Left round, right diamond, neither square. */
function Sign({ joint, mark: { x, y }, radius }: SignProps) {
  const side = sideOfJoint(joint);
  if (side === "left")
    return <circle className={styles.sign} data-side={side} cx={x} cy={y} r={radius} />;
  const reach = radius * (side === "right" ? DIAMOND : SQUARE);
  const path =
    side === "right"
      ? `M${x} ${y - reach}l${reach} ${reach}l${-reach} ${reach}l${-reach} ${-reach}z`
      : `M${x - reach} ${y - reach}h${2 * reach}v${2 * reach}h${-2 * reach}z`;
  return <path className={styles.sign} data-side={side} d={path} />;
}
