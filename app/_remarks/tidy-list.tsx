"use client";
import type { ComponentType } from "react";
import { remarks as words } from "../_words";
import { bundleRemarks } from "./bundle-remarks";
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
        {bundleRemarks(tidy).map(({ key, title, remarks }) => (
          <li key={key}>
            <RemarkCard title={title} remarks={remarks} Acts={Acts} />
          </li>
        ))}
      </ul>
    </details>
  );
}
