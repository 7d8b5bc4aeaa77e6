"use client";
import { memo } from "react";
import { VIEWS } from "../../lib/geometry";
import type { Panel } from "../../lib/sheet";
import { common, fixes as words } from "../_words";
import { useWorkspaceStore } from "../_workspace";
import styles from "./fixes.module.css";
import { REDRAW_LIST } from "./redraw-list";
import { RedrawSign } from "./redraw-sign";

/** A panel's corner: that it is to redraw, and the way to the list. Nothing where it is not. */
export const RedrawBadge = memo(function RedrawBadge({ panel }: { readonly panel: Panel }) {
  const workspace = useWorkspaceStore();
  const views = VIEWS.filter((view) => panel.toRedraw[view]);
  if (views.length === 0) return null;
  const open = () => {
    const { pickPanel, openMargin } = workspace.getState();
    pickPanel(panel.id, views[0]);
    openMargin(true);
    requestAnimationFrame(() => {
      document.getElementById(REDRAW_LIST)?.scrollIntoView({ block: "nearest" });
    });
  };
  return (
    <button
      type="button"
      className={styles.badge}
      aria-label={words.redrawBadge(
        common.pose[panel.pose],
        panel.frame,
        views.map((view) => common.view[view]).join(words.and),
      )}
      onClick={open}
      onPointerDown={(event) => event.stopPropagation()}
    >
      <RedrawSign />
    </button>
  );
});
