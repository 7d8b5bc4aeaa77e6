"use client";
import { remarks as words } from "../_words";
import type { RankedRemark } from "./group-remarks";
import styles from "./margin.module.css";
import { RemarkCard } from "./remark-card";

/** What nobody will see, folded away. */
export function TidyList({ tidy }: { readonly tidy: readonly RankedRemark[] }) {
  return (
    <details className={styles.fold}>
      <summary>{words.tidyFolded(tidy.length)}</summary>
      <ul>
        {tidy.map((entry) => (
          <li key={`${entry.remark.check} ${entry.rank}`}>
            <RemarkCard {...entry} />
          </li>
        ))}
      </ul>
    </details>
  );
}
