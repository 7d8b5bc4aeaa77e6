"use client";
import type { ComponentType } from "react";
import { remarks as words } from "../_words";
import type { RankedRemark } from "./group-remarks";
import styles from "./margin.module.css";
import type { RemarkActsProps } from "./remark-acts";
import { RemarkCard } from "./remark-card";

export interface TidyListProps {
  readonly tidy: readonly RankedRemark[];
  readonly Acts: ComponentType<RemarkActsProps>;
}

/** What nobody will see, folded away. */
export function TidyList({ tidy, Acts }: TidyListProps) {
  return (
    <details className={styles.fold}>
      <summary>{words.tidyFolded(tidy.length)}</summary>
      <ul>
        {tidy.map((entry) => (
          <li key={`${entry.remark.check} ${entry.rank}`}>
            <RemarkCard {...entry} Acts={Acts} />
          </li>
        ))}
      </ul>
    </details>
  );
}
