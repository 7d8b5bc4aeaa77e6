"use client";
import { memo } from "react";
import type { PanelId } from "../../lib/sheet";
import { usePanel, useReview } from "../_room";
import { common, remarks as words } from "../_words";
import { useWorkspaceStore } from "../_workspace";
import { bringToRemarks } from "./bring-to-remarks";
import { countsInWords, gravestLevel } from "./count-remarks";
import { LevelSign } from "./level-sign";
import { seenAt } from "./seen-at";
import styles from "./signs.module.css";

/** A panel's corner: how many remarks are seen there, and the way to them. Nothing when none is. */
export const RemarkBadge = memo(function RemarkBadge({ panelId }: { readonly panelId: PanelId }) {
  const workspace = useWorkspaceStore();
  const panel = usePanel(panelId);
  const found = seenAt(useReview(), panelId);
  const level = gravestLevel(found);
  if (panel === undefined || level === null) return null;
  const open = () => {
    const { pickPanel, openMargin } = workspace.getState();
    pickPanel(panelId);
    openMargin(true);
    requestAnimationFrame(() => bringToRemarks(panelId)); // by then the margin is open
  };
  return (
    <button
      type="button"
      className={styles.badge}
      aria-label={words.badge(common.pose[panel.pose], panel.frame, countsInWords(found))}
      onClick={open}
      onPointerDown={(event) => event.stopPropagation()}
    >
      <LevelSign level={level} count={found.length > 1 ? found.length : undefined} />
    </button>
  );
});
