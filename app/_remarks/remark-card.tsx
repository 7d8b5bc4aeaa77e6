"use client";
import { Button } from "../_controls";
import { remarks as words } from "../_words";
import { useWorkspace, useWorkspaceStore } from "../_workspace";
import type { RankedRemark } from "./group-remarks";
import { LevelSign } from "./level-sign";
import styles from "./margin.module.css";
import { tellReading } from "./tell-reading";

/** One remark: what will be seen, with its numbers, and the way to where it happens. */
export function RemarkCard({ remark, rank }: RankedRemark) {
  const { level, title, frames, why, measured, expected, source, yardstick } = remark;
  const first = frames[0];
  const last = frames.at(-1);
  const when = first === undefined || last === undefined ? null : words.frames(first, last);
  return (
    <article className={styles.remark} data-level={level}>
      <h4>
        <LevelSign level={level} />
        <span className="heard">{words.level[level]}: </span>
        <span>
          {title}
          {when !== null && <span className={styles.when}> · {when}</span>}
        </span>
      </h4>
      <p>{why}</p>
      <div className={styles.act}>
        <ShowButton remark={remark} rank={rank} />
        <details className={styles.number}>
          <summary>{words.whyThisNumber}</summary>
          <p>
            {words.measured(tellReading(measured))}, {words.bound(tellReading(expected))}{" "}
            {words.by(words.yardstick.name[yardstick])}.
          </p>
          <p>{source}.</p>
        </details>
      </div>
    </article>
  );
}

/** Takes the panel in hand and points out where; pressed again it stops pointing. */
function ShowButton({ remark, rank }: RankedRemark) {
  const workspace = useWorkspaceStore();
  const pointed = useWorkspace((state) => state.remark === rank);
  const show = () => {
    const { pickPanel, pointOut } = workspace.getState();
    if (pointed) return pointOut(null);
    const panel = remark.panels.at(-1);
    if (panel !== undefined) pickPanel(panel, remark.spots.at(-1)?.view);
    pointOut(rank);
  };
  return (
    <Button
      small
      aria-pressed={pointed}
      aria-label={words.showNamed(remark.title)}
      className={pointed ? styles.shown : undefined}
      onClick={show}
    >
      {words.show}
    </Button>
  );
}
