"use client";
import { useEffect, useState } from "react";
import { PrintDialog } from "../_handover";
import { InviteDialog } from "../_people";
import { useIncomingPictures } from "../_reference";
import { HelpDialog } from "../_remarks";
import { useRoom, useSheet } from "../_room";
import { rememberOpened } from "../_room/opened-sheets";
import { strip } from "../_words";
import { useWorkspace } from "../_workspace";
import styles from "./board.module.css";
import { Desk } from "./desk";
import { HeadBand } from "./head-band";
import { HELP_SIGNS } from "./help-signs";
import { MarginColumn } from "./margin-column";
import { SheetDialog } from "./sheet-dialog";
import { Spoken } from "./spoken";
import { Stage } from "./stage";
import { Tray } from "./tray";
import { useKeys } from "./use-keys";

/** What lies open over the board, if anything. */
export type Page = "print" | "invite" | "help" | "sheet";

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
  const close = () => setPage(null);
  return (
    <div className={styles.board} data-margin={marginOpen ? "open" : "folded"}>
      <HeadBand onOpen={setPage} />
      <Tray />
      <main className={styles.middle}>{desk ? <Desk /> : <Stage />}</main>
      <MarginColumn />
      <Spoken />
      {page === "print" && <PrintDialog onClose={close} />}
      {page === "invite" && <InviteDialog onClose={close} />}
      {page === "help" && <HelpDialog onClose={close} keys={strip.keys} signs={HELP_SIGNS} />}
      {page === "sheet" && <SheetDialog onClose={close} />}
    </div>
  );
}
