"use client";
import { type Need, sumUpNeeds } from "../../lib/export";
import type { CannotTell, CheckId } from "../../lib/gait";
import { remarks as words } from "../_words";
import styles from "./margin.module.css";

/** So many needs are read at once, and so many questions named for each. */
const MOST_NEEDS = 5;
const MOST_CHECKS = 4;

/** What the board cannot answer yet, and what it would need: folded, each need said once. */
export function UntoldList({ cannotTell }: { readonly cannotTell: readonly CannotTell[] }) {
  const needs = sumUpNeeds(cannotTell);
  if (needs.length === 0) return null;
  const most = needs.length === MOST_NEEDS + 1 ? needs.length : MOST_NEEDS;
  const waiting = needs.slice(most);
  return (
    <details className={styles.fold}>
      <summary>{words.untold(cannotTell.length)}</summary>
      <p>{words.untoldLead}</p>
      <Needs needs={needs.slice(0, most)} />
      {waiting.length > 0 && (
        <details className={styles.inner}>
          <summary>{words.untoldMore(waiting.length)}</summary>
          <Needs needs={waiting} />
        </details>
      )}
    </details>
  );
}

function Needs({ needs }: { readonly needs: readonly Need[] }) {
  return (
    <ul className={styles.needs}>
      {needs.map(({ needs: what, checks }) => (
        <li key={what}>
          {what} <span>({namesOf(checks)})</span>
        </li>
      ))}
    </ul>
  );
}

/** "hip heights, timing, 7 more". */
function namesOf(checks: readonly CheckId[]): string {
  const most = checks.length === MOST_CHECKS + 1 ? checks.length : MOST_CHECKS;
  const names = checks.slice(0, most).map((check) => words.check[check]);
  const others = checks.length - names.length;
  return [...names, ...(others > 0 ? [words.moreChecks(others)] : [])].join(", ");
}
