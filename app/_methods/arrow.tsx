import type { Point } from "../../lib/geometry";
import styles from "./pictures.module.css";

export interface ArrowProps {
  readonly from: Point;
  readonly to: Point;
}

const HEAD = 7; // picture units

/** A way that something takes, measured. */
export function Arrow({ from, to }: ArrowProps) {
  const angle = Math.atan2(to.y - from.y, to.x - from.x);
  const barb = (turn: number) =>
    `M${to.x} ${to.y}L${to.x - HEAD * Math.cos(angle + turn)} ${to.y - HEAD * Math.sin(angle + turn)}`;
  return (
    <path
      className={styles.measure}
      d={`M${from.x} ${from.y}L${to.x} ${to.y}${barb(0.5)}${barb(-0.5)}`}
    />
  );
}
