import type { Level } from "../../lib/gait";
import { remarks } from "../_words";
import styles from "./level-mark.module.css";

export interface LevelMarkProps {
  readonly level: Level;
}

/** A level by its sign and its words. */
export function LevelMark({ level }: LevelMarkProps) {
  return (
    <span className={styles.level} data-level={level}>
      <svg viewBox="0 0 20 18" aria-hidden="true" focusable="false">
        {level === "tidy" ? (
          <circle cx="10" cy="10.5" r="3" />
        ) : (
          <path d="M10 1.6 18.6 16.4H1.4Z" />
        )}
      </svg>
      {remarks.level[level]}
    </span>
  );
}
