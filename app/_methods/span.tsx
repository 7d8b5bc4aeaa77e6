import type { Point } from "../../lib/geometry";
import styles from "./pictures.module.css";

export interface SpanProps {
  readonly from: Point;
  readonly to: Point;
}

const TICK = 4.5; // picture units, half of it to each side

/** What is measured: a line from here to there, a tick across either end. */
export function Span({ from, to }: SpanProps) {
  const length = Math.hypot(to.x - from.x, to.y - from.y) || 1;
  const across = { x: (-(to.y - from.y) / length) * TICK, y: ((to.x - from.x) / length) * TICK };
  const tick = ({ x, y }: Point) =>
    `M${x - across.x} ${y - across.y}L${x + across.x} ${y + across.y}`;
  return (
    <path
      className={styles.measure}
      d={`M${from.x} ${from.y}L${to.x} ${to.y}${tick(from)}${tick(to)}`}
    />
  );
}
