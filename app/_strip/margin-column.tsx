"use client";
import { Margin } from "../_remarks";
import { strip } from "../_words";
import styles from "./board.module.css";

/** The margin: a column where there is room, a drawer where there is not. */
export function MarginColumn() {
  return (
    <aside id="margin" className={styles.margin} aria-label="Margin">
      <Margin keys={strip.keys} />
    </aside>
  );
}
