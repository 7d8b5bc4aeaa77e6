import type { Side } from "../../lib/body";
import type { Point } from "../../lib/geometry";
import { JointDot } from "./joint-dot";
import styles from "./pictures.module.css";

export interface PrintProps {
  readonly side: Side;
  /** Its heel. */
  readonly at: Point;
}

/** A footprint from above, the walker going to the right. */
export function Print({ side, at: { x, y } }: PrintProps) {
  const big = side === "left" ? 1 : -1; // the big toe lies to the middle
  return (
    <g>
      <path
        className={styles.print}
        d={`M${x} ${y}c-12 0-12 ${-10 * big}-2 ${-10 * big}c14 0 20 ${-4 * big} 34 ${-3 * big}c16 1 18 ${22 * big} 4 ${23 * big}c-14 1-22 ${-9 * big}-36 ${-10 * big}Z`}
      />
      <JointDot side={side} at={{ x, y }} size={3.4} />
    </g>
  );
}
