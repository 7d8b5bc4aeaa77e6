import type { Point } from "../../lib/geometry";
import styles from "./pictures.module.css";

export interface GuideProps {
  readonly from: Point;
  readonly to: Point;
  /** A line of the measure itself rather than one that helps to read it. */
  readonly measured?: boolean;
}

/** A dashed line that carries a height or a place over to where it is compared. */
export function Guide({ from, to, measured = false }: GuideProps) {
  return (
    <line
      className={measured ? styles.drop : styles.guide}
      x1={from.x}
      y1={from.y}
      x2={to.x}
      y2={to.y}
    />
  );
}
