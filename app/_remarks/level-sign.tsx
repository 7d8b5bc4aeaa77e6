import type { Level } from "../../lib/gait";
import styles from "./signs.module.css";

export interface LevelSignProps {
  readonly level: Level;
  /** Stands inside the triangle. */
  readonly count?: number | undefined;
}

const MOST_COUNTED = 9; // two figures do not fit the triangle

/** A remark's sign for the eye: full triangle, hollow triangle, dot. Its words stand beside it. */
export function LevelSign({ level, count }: LevelSignProps) {
  return (
    <svg
      className={styles.sign}
      data-level={level}
      viewBox="0 0 20 18"
      aria-hidden="true"
      focusable="false"
    >
      {level === "tidy" ? <circle cx="10" cy="10.5" r="3" /> : <path d="M10 1.6 18.6 16.4H1.4Z" />}
      {count !== undefined && level !== "tidy" && (
        <text x="10" y="14.6" textAnchor="middle">
          {count > MOST_COUNTED ? "+" : count}
        </text>
      )}
    </svg>
  );
}
