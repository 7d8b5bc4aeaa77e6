"use client";
import type { ButtonHTMLAttributes, Ref } from "react";
import styles from "./row.module.css";

export interface RowProps extends ButtonHTMLAttributes<HTMLButtonElement> {
  readonly ref?: Ref<HTMLButtonElement>;
  /** The key that does the same. */
  readonly hint?: string;
  /** On or off, told by a tick. */
  readonly tick?: boolean;
  /** A sign at the row's end that says nothing to a screen reader. */
  readonly sign?: string;
}

/** A thing in the tray: what is in the hand or on lies picked up on paper. */
export function Row({ hint, tick, sign, children, className, ...rest }: RowProps) {
  const classes = [styles.row, className ?? ""];
  return (
    <button type="button" className={classes.join(" ").trim()} aria-pressed={tick} {...rest}>
      {tick !== undefined && (
        <span className={styles.tick} aria-hidden="true">
          {tick ? "✓" : ""}
        </span>
      )}
      <span className={styles.words}>{children}</span>
      {sign !== undefined && <span aria-hidden="true">{sign}</span>}
      {hint !== undefined && <kbd>{hint}</kbd>}
    </button>
  );
}
