import type { Point } from "../../lib/geometry";
import styles from "./layer.module.css";

export interface ArrowHeadProps {
  readonly from: Point;
  readonly to: Point;
  /** Length of the head, panel units. */
  readonly size: number;
}

/** An arrow's head at `to`, pointing away from `from`. */
export function ArrowHead({ from, to, size }: ArrowHeadProps) {
  const angle = Math.atan2(to.y - from.y, to.x - from.x);
  const corner = (along: number, across: number) => {
    const x = to.x + along * Math.cos(angle) - across * Math.sin(angle);
    const y = to.y + along * Math.sin(angle) + across * Math.cos(angle);
    return `${x.toFixed(2)},${y.toFixed(2)}`;
  };
  const points = [corner(0, 0), corner(-size, size * 0.6), corner(-size, -size * 0.6)];
  return <polygon className={styles.head} points={points.join(" ")} />;
}
