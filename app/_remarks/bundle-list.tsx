"use client";
import type { ComponentType } from "react";
import type { Level } from "../../lib/gait";
import { remarks as words } from "../_words";
import { bundleRemarks, foldBundles, type RemarkBundle } from "./bundle-remarks";
import { countsInWords } from "./count-remarks";
import type { RankedRemark } from "./group-remarks";
import styles from "./margin.module.css";
import type { RemarkActsProps } from "./remark-acts";
import { RemarkCard } from "./remark-card";

export interface BundleListProps {
  readonly remarks: readonly RankedRemark[];
  readonly Acts: ComponentType<RemarkActsProps>;
}

/** Many remarks: what will be seen first, what is said of several places said once, the rest folded. */
export function BundleList({ remarks, Acts }: BundleListProps) {
  const { shown, folded } = foldBundles(bundleRemarks(remarks));
  const waiting = folded.flatMap((bundle) => bundle.remarks.map(({ remark }) => remark));
  return (
    <>
      <Levels bundles={shown} Acts={Acts} />
      {folded.length > 0 && (
        <details className={styles.fold}>
          <summary>
            {words.moreRemarks(waiting.length)}
            <span className={styles.folded}> {countsInWords(waiting)}</span>
          </summary>
          <Levels bundles={folded} Acts={Acts} />
        </details>
      )}
    </>
  );
}

interface LevelsProps extends Pick<BundleListProps, "Acts"> {
  readonly bundles: readonly RemarkBundle[];
}

const LEVELS: readonly Level[] = ["shows", "may-show"];

/** A heading for each level there is. */
function Levels({ bundles, Acts }: LevelsProps) {
  return LEVELS.map((level) => {
    const own = bundles.filter(({ remarks: [{ remark }] }) => remark.level === level);
    return own.length === 0 ? null : (
      <LevelSection key={level} {...{ level, Acts }} bundles={own} />
    );
  });
}

function LevelSection({ level, bundles, Acts }: LevelsProps & { readonly level: Level }) {
  return (
    <section className={styles.group}>
      <h3>{words.level[level]}</h3>
      <ul>
        {bundles.map(({ key, title, remarks }) => (
          <li key={key}>
            <RemarkCard title={title} remarks={remarks} Acts={Acts} />
          </li>
        ))}
      </ul>
    </section>
  );
}
