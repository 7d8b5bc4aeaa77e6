"use client";
import type { CannotTell } from "../../lib/gait";
import { remarks as words } from "../_words";
import styles from "./margin.module.css";
import { sumUpUntold } from "./sum-up-untold";

/** What the board cannot answer yet, and what it would need: folded, each need said once. */
export function UntoldList({ cannotTell }: { readonly cannotTell: readonly CannotTell[] }) {
  const needs = sumUpUntold(cannotTell);
  if (needs.length === 0) return null;
  return (
    <details className={styles.fold}>
      <summary>{words.untold(cannotTell.length)}</summary>
      <p>{words.untoldLead}</p>
      <ul className={styles.needs}>
        {needs.map(({ needs: what, checks }) => (
          <li key={what}>
            {what} <span>({checks.map((check) => words.check[check]).join(", ")})</span>
          </li>
        ))}
      </ul>
    </details>
  );
}
