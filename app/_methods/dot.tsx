import type { Point } from "../../lib/geometry";
import styles from "./pictures.module.css";

export interface DotProps {
  readonly at: Point;
}

/** A point that is measured. */
export function Dot({ at }: DotProps) {
  return <circle className={styles.dot} cx={at.x} cy={at.y} r={4} />;
}
