import { type JointName, markOf, type ViewMarks } from "../../lib/body";
import type { Level } from "../../lib/gait";
import styles from "./layer.module.css";

export interface SpotRingsProps {
  readonly marks: ViewMarks;
  readonly joints: readonly JointName[];
  readonly level: Level;
  readonly pixel: number;
}

const RING_PX = 11;

/** Rings about the marks that a pointed-out remark was read from. */
export function SpotRings({ marks, joints, level, pixel }: SpotRingsProps) {
  return joints.map((joint) => {
    const mark = markOf(marks, joint);
    if (mark === null) return null;
    return (
      <circle
        key={joint}
        className={styles.ring}
        data-level={level}
        cx={mark.x}
        cy={mark.y}
        r={RING_PX * pixel}
        strokeWidth={2.5 * pixel}
      />
    );
  });
}
