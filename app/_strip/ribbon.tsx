"use client";
import { useEffect, useRef } from "react";
import type { Panel } from "../../lib/sheet";
import { PaperThumb } from "../_paper";
import { PlayButton } from "../_play";
import { useSheet } from "../_room";
import { common, strip } from "../_words";
import { useWorkspace } from "../_workspace";
import styles from "./desk.module.css";
import { SideSign } from "./side-sign";

const THUMB_WIDTH = 46; // px: enough to see which pose it is

/** The strip as a ribbon under the drawing desk: pick, flip, play. */
export function Ribbon() {
  const panels = useSheet((sheet) => sheet.panels);
  return (
    <nav className={styles.ribbon} aria-label={strip.desk.ribbon}>
      <PlayButton />
      <ol>
        {panels.map((panel) => (
          <RibbonPanel key={panel.id} panel={panel} />
        ))}
      </ol>
    </nav>
  );
}

function RibbonPanel({ panel }: { readonly panel: Panel }) {
  const ref = useRef<HTMLButtonElement>(null);
  const inHand = useWorkspace((workspace) => workspace.panel === panel.id);
  const pickPanel = useWorkspace((workspace) => workspace.pickPanel);
  useEffect(() => {
    if (inHand) ref.current?.scrollIntoView({ block: "nearest", inline: "nearest" });
  }, [inHand]);
  const side = panel.weightOn === null ? "" : common.side[panel.weightOn];
  return (
    <li>
      <button
        ref={ref}
        type="button"
        aria-pressed={inHand}
        aria-label={strip.panelName(common.pose[panel.pose], side, panel.frame)}
        onClick={() => pickPanel(panel.id)}
      >
        <PaperThumb panel={panel} view="side" width={THUMB_WIDTH} />
        <b>{panel.frame}</b>
        <SideSign side={panel.weightOn} />
      </button>
    </li>
  );
}
