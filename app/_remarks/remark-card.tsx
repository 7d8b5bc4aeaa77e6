"use client";
import { type ComponentType, useEffect, useRef, useState } from "react";
import type { Remark } from "../../lib/gait";
import { Button } from "../_controls";
import { useReview } from "../_room";
import { remarks as words } from "../_words";
import { useWorkspace } from "../_workspace";
import folds from "./also-read.module.css";
import type { RankedRemark } from "./group-remarks";
import { keepTogether } from "./keep-together";
import { LevelSign } from "./level-sign";
import styles from "./margin.module.css";
import { MethodLink } from "./method-link";
import type { RemarkActsProps } from "./remark-acts";
import { remarkNumbers } from "./remark-numbers";
import { RemarkPlaces } from "./remark-places";
import { tellMeasure } from "./tell-reading";
import { useGlance } from "./use-glance";
import { usePointing } from "./use-pointing";

export interface RemarkCardProps {
  readonly title: string;
  /** What it says, at each place where it is so, gravest first. */
  readonly remarks: readonly [RankedRemark, ...RankedRemark[]];
  readonly Acts: ComponentType<RemarkActsProps>;
}

/** A remark: what will be seen, with its numbers, and the way to where it happens, or to each such place. */
export function RemarkCard({ title, remarks, Acts }: RemarkCardProps) {
  const [asked, ask] = useState<number | null>(null);
  const told = useToldPlace(remarks, asked);
  const { remark } = told;
  const alone = remarks.length === 1;
  const { pointed, pointOut, turn } = usePointing(told);
  const glance = useGlance(told.rank);
  return (
    <article
      className={styles.remark}
      data-level={remarks[0].remark.level}
      data-remarks-at={remarks.map((one) => one.remark.panels.at(-1)).join(" ")}
      {...glance}
    >
      <CardHeading title={title} remarks={remarks} />
      {!alone && <RemarkPlaces remarks={remarks} told={told} onAsk={ask} />}
      <p>{keepTogether(remark.why)}</p>
      <div className={styles.act}>
        {alone && (
          <Button
            small
            aria-pressed={pointed}
            aria-label={words.showNamed(remark.title)}
            className={pointed ? styles.shown : undefined}
            onClick={turn}
          >
            {words.show}
          </Button>
        )}
        <Acts remark={remark} pointed={pointed} onPointOut={pointOut} />
        <WhyThisNumber remark={remark} />
      </div>
      <AlsoRead also={remarks.flatMap(({ also }) => also)} Acts={Acts} />
    </article>
  );
}

/** The place that a card speaks of: the one pointed out, the one asked for, the one in hand, the gravest. */
function useToldPlace(remarks: RemarkCardProps["remarks"], asked: number | null): RankedRemark {
  const pointed = useWorkspace((workspace) => workspace.remark);
  const inHand = useWorkspace((workspace) => workspace.panel);
  return (
    remarks.find(({ rank }) => rank === pointed) ??
    remarks.find(({ rank }) => rank === asked) ??
    remarks.find(({ remark }) => remark.panels.at(-1) === inHand) ??
    remarks[0]
  );
}

function CardHeading({ title, remarks }: Pick<RemarkCardProps, "title" | "remarks">) {
  const numbers = remarkNumbers(useReview());
  const [{ remark }] = remarks;
  const alone = remarks.length === 1;
  const number = alone ? numbers.get(remark) : undefined;
  return (
    <h4>
      <LevelSign level={remark.level} />
      <span>
        {number !== undefined && <span className={styles.key}>{number} </span>}
        <span className="heard">{words.level[remark.level]}: </span>
        {title}
        {alone ? (
          <When frames={remark.frames} />
        ) : (
          <span className="heard">, {words.places(remarks.length)}</span>
        )}
      </span>
    </h4>
  );
}

function When({ frames }: Pick<Remark, "frames">) {
  const [first, last] = [frames[0], frames.at(-1)];
  if (first === undefined || last === undefined || first === last) return null;
  return (
    <>
      <span className={styles.when} aria-hidden="true">
        {" · "}
        {keepTogether(words.frames(first, last))}
      </span>
      <span className="heard">{words.framesHeard(first, last)}</span>
    </>
  );
}

interface AlsoReadProps extends Pick<RemarkCardProps, "Acts"> {
  readonly also: readonly RankedRemark[];
}

/** What goes too when the remark is settled, folded; it opens when one of it is pointed out. */
function AlsoRead({ also, Acts }: AlsoReadProps) {
  const fold = useRef<HTMLDetailsElement>(null);
  const within = useWorkspace(({ remark }) => also.some(({ rank }) => rank === remark));
  useEffect(() => {
    if (within && fold.current !== null) fold.current.open = true;
  }, [within]);
  if (also.length === 0) return null;
  return (
    <details ref={fold} className={folds.also}>
      <summary>{words.alsoRead(also.map(({ remark }) => remark.title))}</summary>
      <p>{words.alsoSettled(also.length)}</p>
      <ul>
        {also.map((one) => (
          <li key={one.rank}>
            <RemarkCard title={one.remark.title} remarks={[one]} Acts={Acts} />
          </li>
        ))}
      </ul>
    </details>
  );
}

function WhyThisNumber({ remark }: { readonly remark: Remark }) {
  const { check, measured, expected, source, yardstick } = remark;
  const number = words.measured(
    tellMeasure(measured),
    tellMeasure(expected),
    words.yardstick.name[yardstick],
  );
  return (
    <details className={styles.number}>
      <summary>{words.whyThisNumber}</summary>
      <p>{keepTogether(number)}</p>
      <p>{keepTogether(source)}.</p>
      <MethodLink check={check} />
    </details>
  );
}
