import type { Side } from "../../lib/body";
import type { Point } from "../../lib/geometry";
import styles from "./pictures.module.css";

export interface JointDotProps {
  readonly side: Side;
  readonly at: Point;
  readonly size?: number;
}

/** A joint's mark as on the board: left is round, right is a diamond. */
export function JointDot({ side, at: { x, y }, size = 3 }: JointDotProps) {
  if (side === "left") return <circle className={styles.left} cx={x} cy={y} r={size} />;
  const reach = size * 1.25;
  return (
    <path
      className={styles.right}
      d={`M${x} ${y - reach}L${x + reach} ${y}L${x} ${y + reach}L${x - reach} ${y}Z`}
    />
  );
}
