"use client";
import { useEffect, useState } from "react";
import { ToldNote } from "../_handover";
import { useIncomingPictures } from "../_reference";
import { useRoom, useSheet } from "../_room";
import { rememberOpened } from "../_room/opened-sheets";
import { useWorkspace } from "../_workspace";
import styles from "./board.module.css";
import { BoardPage } from "./board-page";
import { Desk } from "./desk";
import type { Page } from "./fetch-page";
import { HeadBand } from "./head-band";
import { MarginColumn } from "./margin-column";
import { Spoken } from "./spoken";
import { Stage } from "./stage";
import { Tray } from "./tray";
import { useKeys } from "./use-keys";
import { usePagesAhead } from "./use-pages-ahead";
import { useReaderAhead } from "./use-reader-ahead";

/** The board: head band, tray, strip or drawing desk, margin. Here the features meet. */
export function Board() {
  const room = useRoom();
  const title = useSheet((sheet) => sheet.head.title);
  const desk = useWorkspace((workspace) => workspace.desk && workspace.panel !== null);
  const marginOpen = useWorkspace((workspace) => workspace.marginOpen);
  const [page, setPage] = useState<Page | null>(null);
  useKeys({ openHelp: () => setPage("help"), asleep: page !== null });
  useIncomingPictures();
  useEffect(() => {
    document.title = `${title} · Heelstrip`;
    rememberOpened({ sheet: room.sheetId, title, at: Date.now() });
  }, [room, title]);
  useReaderAhead();
  usePagesAhead();
  return (
    <div className={styles.board} data-margin={marginOpen ? "open" : "folded"}>
      <HeadBand onOpen={setPage} />
      <Tray />
      <main className={styles.middle}>{desk ? <Desk /> : <Stage />}</main>
      <MarginColumn onHelp={() => setPage("help")} />
      <Spoken />
      <ToldNote />
      {page !== null && <BoardPage key={page} page={page} onClose={() => setPage(null)} />}
    </div>
  );
}
