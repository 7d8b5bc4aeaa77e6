import type { Point } from "../../lib/geometry";
import { line } from "./figure";
import { JointDot } from "./joint-dot";
import styles from "./pictures.module.css";

export interface LegProps {
  readonly hip: Point;
  readonly knee: Point;
  readonly ankle: Point;
  readonly ghost?: boolean;
}

const FOOT = { heel: 9, toe: 26, sole: 11 } as const; // picture units about the ankle

/** A single leg from the side, its foot flat. */
export function Leg({ hip, knee, ankle, ghost = false }: LegProps) {
  const sole = ankle.y + FOOT.sole;
  return (
    <g className={ghost ? styles.ghost : styles.figure}>
      <path d={line([hip, knee, ankle])} />
      <path
        className={styles.foot}
        d={`${line([ankle, { x: ankle.x - FOOT.heel, y: sole }, { x: ankle.x + FOOT.toe, y: sole }])}Z`}
      />
      {!ghost && [hip, knee, ankle].map((at) => <JointDot key={at.y} side="right" at={at} />)}
    </g>
  );
}
