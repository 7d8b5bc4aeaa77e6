"use client";
import { Button } from "../_controls";
import { PeopleBar, StateLine } from "../_people";
import { useReader, useReview, useRoom, useSheet, useStoreValue } from "../_room";
import { strip } from "../_words";
import { useWorkspace } from "../_workspace";
import styles from "./board.module.css";
import type { Page } from "./fetch-page";
import { tempoWords } from "./tempo-words";

export interface HeadBandProps {
  readonly onOpen: (page: Page) => void;
}

/** The walk's name and tempo, who is here, and whether the ink is saved. */
export function HeadBand({ onOpen }: HeadBandProps) {
  const room = useRoom();
  const head = useSheet((sheet) => sheet.head);
  const owner = useStoreValue(room.role) === "owner";
  const marginOpen = useWorkspace((workspace) => workspace.marginOpen);
  const openMargin = useWorkspace((workspace) => workspace.openMargin);
  const remarks = useRemarksTold();
  return (
    <header className={styles.band}>
      <div className={styles.title}>
        <h1>
          <button type="button" onClick={() => onOpen("sheet")} title={strip.head.about}>
            {head.title}
          </button>
        </h1>
        {head.shot !== "" && <span className={styles.shot}>{head.shot}</span>}
      </div>
      <p className={styles.tempo}>{tempoWords(head)}</p>
      <PeopleBar />
      <StateLine />
      <div className={styles.acts}>
        <Button look="quiet" small onClick={() => onOpen("help")}>
          {strip.head.help}
        </Button>
        {owner && (
          <Button small onClick={() => onOpen("invite")}>
            {strip.head.invite}
          </Button>
        )}
        <Button small look="main" onClick={() => onOpen("print")}>
          <span className={styles.wideOnly}>{strip.head.print}</span>
          <span className={styles.narrowOnly}>{strip.head.printShort}</span>
        </Button>
        <Button
          small
          className={styles.marginButton}
          aria-expanded={marginOpen}
          aria-controls="margin"
          onClick={() => openMargin(!marginOpen)}
        >
          {strip.head.remarks} {remarks}
        </Button>
      </div>
    </header>
  );
}

/** How many remarks there are; what is not read is not passed off as none. */
function useRemarksTold(): string {
  const review = useReview();
  const unfetched = useReader() === "unfetched";
  if (review === null) return unfetched ? strip.head.unread : strip.head.reading;
  return review.remarks.length > 0 ? String(review.remarks.length) : "";
}
