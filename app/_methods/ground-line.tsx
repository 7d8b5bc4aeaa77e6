import { PICTURE } from "./picture";
import styles from "./pictures.module.css";

export interface GroundLineProps {
  readonly y?: number;
  readonly from?: number;
  readonly to?: number;
}

/** What the walker stands on. */
export function GroundLine({
  y = PICTURE.ground,
  from = 12,
  to = PICTURE.width - 12,
}: GroundLineProps) {
  return <line className={styles.ground} x1={from} x2={to} y1={y} y2={y} />;
}
