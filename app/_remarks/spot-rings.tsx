import { type JointName, markOf, PANEL, type ViewMarks } from "../../lib/body";
import type { Level } from "../../lib/gait";
import styles from "./layer.module.css";

export interface SpotRingsProps {
  readonly marks: ViewMarks;
  readonly joints: readonly JointName[];
  readonly level: Level;
  readonly pixel: number;
}

const RING_PX = { least: 5, most: 12 } as const;
const RING_SHARE = 0.03; // of the paper's width: a ring on the strip is no larger than a head

/** Rings about the marks that a pointed-out remark was read from. */
export function SpotRings({ marks, joints, level, pixel }: SpotRingsProps) {
  const share = (RING_SHARE * PANEL.width) / pixel; // px
  const ring = Math.min(RING_PX.most, Math.max(RING_PX.least, share));
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
        r={ring * pixel}
        strokeWidth={2 * pixel}
      />
    );
  });
}
