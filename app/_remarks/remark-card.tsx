"use client";
import type { ComponentType } from "react";
import { Button } from "../_controls";
import { remarks as words } from "../_words";
import { useWorkspace, useWorkspaceStore } from "../_workspace";
import type { RankedRemark } from "./group-remarks";
import { keepTogether } from "./keep-together";
import { LevelSign } from "./level-sign";
import styles from "./margin.module.css";
import { MethodLink } from "./method-link";
import type { RemarkActsProps } from "./remark-acts";
import { tellMeasure } from "./tell-reading";

export interface RemarkCardProps extends RankedRemark {
  readonly Acts: ComponentType<RemarkActsProps>;
}

/** One remark: what will be seen, with its numbers, and the way to where it happens. */
export function RemarkCard({ remark, rank, Acts }: RemarkCardProps) {
  const { check, level, title, frames, why, measured, expected, source, yardstick } = remark;
  const { pointed, pointOut, turn } = usePointing({ remark, rank });
  const first = frames[0];
  const last = frames.at(-1);
  const number = words.measured(
    tellMeasure(measured),
    tellMeasure(expected),
    words.yardstick.name[yardstick],
  );
  return (
    <article className={styles.remark} data-level={level}>
      <h4>
        <LevelSign level={level} />
        <span className="heard">{words.level[level]}: </span>
        <span>
          {title}
          {first !== undefined && last !== undefined && first !== last && (
            <>
              <span className={styles.when} aria-hidden="true">
                {" · "}
                {keepTogether(words.frames(first, last))}
              </span>
              <span className="heard">{words.framesHeard(first, last)}</span>
            </>
          )}
        </span>
      </h4>
      <p>{keepTogether(why)}</p>
      <div className={styles.act}>
        <Button
          small
          aria-pressed={pointed}
          aria-label={words.showNamed(title)}
          className={pointed ? styles.shown : undefined}
          onClick={turn}
        >
          {words.show}
        </Button>
        <Acts remark={remark} pointed={pointed} onPointOut={pointOut} />
        <details className={styles.number}>
          <summary>{words.whyThisNumber}</summary>
          <p>{keepTogether(number)}</p>
          <p>{keepTogether(source)}.</p>
          <MethodLink check={check} />
        </details>
      </div>
    </article>
  );
}

/** In windows up to this wide the margin is a drawer over the strip: it would hide what it shows. */
const DRAWER_UP_TO_PX = 1240;

/** Takes the panel in hand and points out where; asked again it stops pointing. */
function usePointing({ remark, rank }: RankedRemark) {
  const workspace = useWorkspaceStore();
  const pointed = useWorkspace((state) => state.remark === rank);
  const pointOut = () => {
    const now = workspace.getState();
    const panel = remark.panels.at(-1);
    if (panel !== undefined) now.pickPanel(panel, remark.spots.at(-1)?.view);
    now.pointOut(rank);
    if (window.innerWidth <= DRAWER_UP_TO_PX) now.openMargin(false);
  };
  const turn = () => (pointed ? workspace.getState().pointOut(null) : pointOut());
  return { pointed, pointOut, turn };
}
