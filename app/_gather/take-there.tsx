"use client";
import { useState } from "react";
import { VIEWS } from "../../lib/geometry";
import { UNSHAPED } from "../../lib/ink";
import type { Sheet } from "../../lib/sheet";
import { Button, Choice } from "../_controls";
import { useRoom, useSheet } from "../_room";
import { common, gather as words } from "../_words";
import { useWorkspace, useWorkspaceStore } from "../_workspace";
import styles from "./gather.module.css";
import { shapeGathered } from "./gather-deeds";

const panelsOf = (sheet: Sheet) => sheet.panels;

/** Takes what is gathered to another paper, to the same place on it. */
export function TakeThere() {
  const room = useRoom();
  const workspace = useWorkspaceStore();
  const panels = useSheet(panelsOf);
  const gathered = useWorkspace((now) => now.gathered);
  const [chosen, setChosen] = useState("");
  const papers = panels.flatMap(({ id, frame, pose }) =>
    VIEWS.filter((view) => id !== gathered?.panel || view !== gathered.view).map((view) => ({
      ...{ panel: id, view, value: `${id} ${view}` },
      words: words.paper(frame, common.pose[pose], common.view[view]),
    })),
  );
  const paper = papers.find(({ value }) => value === chosen) ?? papers[0];
  if (paper === undefined) return null;
  return (
    <div className={styles.there}>
      <Choice label={words.to} value={paper.value} options={papers} onChoose={setChosen} />
      <Button
        small
        onClick={() =>
          shapeGathered(room, workspace, UNSHAPED, { panel: paper.panel, view: paper.view })
        }
      >
        {words.move}
      </Button>
    </div>
  );
}
