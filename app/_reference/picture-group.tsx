"use client";
import { useEffect, useRef } from "react";
import { Row } from "../_controls";
import { usePanel, useRoom } from "../_room";
import { reference as words } from "../_words";
import { useWorkspace, useWorkspaceStore } from "../_workspace";
import { PictureForm } from "./picture-form";
import { PictureJobLine } from "./picture-job-line";
import styles from "./reference.module.css";

/** The picture under the view in hand: its row in the tray, its options, and how it fares. */
export function PictureGroup() {
  const desk = { room: useRoom(), workspace: useWorkspaceStore() };
  const open = useWorkspace((workspace) => workspace.pictureOpen);
  const openPicture = useWorkspace((workspace) => workspace.openPicture);
  const told = useWorkspace((workspace) => workspace.pictureTold);
  const view = useWorkspace((workspace) => workspace.view);
  const panel = usePanel(useWorkspace((workspace) => workspace.panel));
  const busy = useWorkspace((workspace) => workspace.pictureJob !== null);
  const has = panel !== undefined && panel.pictures[view] !== null;
  const fold = useRef<HTMLButtonElement>(null);
  const wasOpen = useRef(false);

  // The options close with the focus in them: it goes back to the row.
  useEffect(() => {
    const lost = document.activeElement === null || document.activeElement === document.body;
    if (wasOpen.current && !open && lost) fold.current?.focus();
    wasOpen.current = open;
  }, [open]);

  return (
    <section
      className={styles.group}
      aria-label={words.name}
      data-asked={open || busy}
      data-open={open}
    >
      <Row
        ref={fold}
        hint={words.key}
        sign={has ? "✓" : ""}
        aria-expanded={open}
        aria-label={words.name}
        onClick={() => openPicture(!open)}
      >
        {words.row}
      </Row>
      {open && <PictureForm desk={desk} panel={panel} view={view} />}
      <PictureJobLine />
      <p className={styles.said} role="status">
        {told}
      </p>
    </section>
  );
}
