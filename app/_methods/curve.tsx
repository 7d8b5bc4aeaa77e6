import type { Point } from "../../lib/geometry";
import styles from "./pictures.module.css";

export interface CurveProps {
  readonly through: readonly Point[];
  readonly ghost?: boolean;
}

/** A smooth line through points, level at each: a height over time. */
export function Curve({ through, ghost = false }: CurveProps) {
  const [first, ...rest] = through;
  if (first === undefined) return null;
  let from = first;
  const d = rest.map((to) => {
    const half = (from.x + to.x) / 2;
    const part = `C${half} ${from.y} ${half} ${to.y} ${to.x} ${to.y}`;
    from = to;
    return part;
  });
  return (
    <path
      className={ghost ? styles.ghostCurve : styles.curve}
      d={`M${first.x} ${first.y}${d.join("")}`}
    />
  );
}
