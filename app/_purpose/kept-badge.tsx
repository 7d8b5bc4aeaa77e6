"use client";
import { memo } from "react";
import type { PanelId } from "../../lib/sheet";
import { usePanel, useReview } from "../_room";
import { common, purpose as words } from "../_words";
import { useWorkspaceStore } from "../_workspace";
import { keptAt } from "./kept-at";
import { KEPT_LIST } from "./kept-list";
import { KeptSign } from "./kept-sign";
import styles from "./purpose.module.css";

/** A panel's corner: that something is kept on purpose there, and the way to why. Nothing where none is. */
export const KeptBadge = memo(function KeptBadge({ panelId }: { readonly panelId: PanelId }) {
  const workspace = useWorkspaceStore();
  const panel = usePanel(panelId);
  const kept = keptAt(useReview(), panelId);
  if (panel === undefined || kept.length === 0) return null;
  const open = () => {
    const { pickPanel, openMargin } = workspace.getState();
    pickPanel(panelId);
    openMargin(true);
    requestAnimationFrame(() => {
      const list = document.getElementById(KEPT_LIST);
      if (list instanceof HTMLDetailsElement) list.open = true;
      list?.scrollIntoView({ block: "nearest" });
    });
  };
  const titles = kept.map(({ remark }) => remark.title);
  return (
    <button
      type="button"
      className={styles.badge}
      aria-label={words.badge(common.pose[panel.pose], panel.frame, titles)}
      onClick={open}
      onPointerDown={(event) => event.stopPropagation()}
    >
      <KeptSign />
    </button>
  );
});
