"use client";
import { memo, useId } from "react";
import type { Panel } from "../../lib/sheet";
import { RedrawBadge } from "../_fixes";
import { KeptBadge } from "../_purpose";
import { RemarkBadge } from "../_remarks";
import { useReviewed } from "../_room";
import { common, strip } from "../_words";
import { useWorkspace } from "../_workspace";
import { panelTold } from "./panel-told";
import { Paper } from "./paper";
import { PlaceSign } from "./place-sign";
import { SideSign } from "./side-sign";
import styles from "./stage.module.css";

const ROOMY = 104; // px: a side's name, and a place of four figures, beside each other

export interface PanelColumnProps {
  readonly panel: Panel;
  readonly left: number;
  readonly width: number;
  readonly mayDraw: boolean;
}

/** One panel on the strip: its pose, whose weight, and its two papers. */
export const PanelColumn = memo(function PanelColumn(props: PanelColumnProps) {
  const { panel, left, width, mayDraw } = props;
  const inHand = useWorkspace((workspace) => workspace.panel === panel.id);
  const pickPanel = useWorkspace((workspace) => workspace.pickPanel);
  const openDesk = useWorkspace((workspace) => workspace.openDesk);
  const told = useReviewed((review) => panelTold(panel, review));
  const toldId = useId();
  return (
    <article
      className={styles.column}
      style={{ left, width }}
      data-in-hand={inHand}
      data-column={panel.id}
      aria-labelledby={toldId}
    >
      <span id={toldId} hidden>
        {told}
      </span>
      <header>
        <button
          type="button"
          aria-pressed={inHand}
          aria-describedby={toldId}
          onClick={() => pickPanel(panel.id)}
          onDoubleClick={() => openDesk(panel.id)}
          onKeyDown={(event) => {
            if (event.key !== "Enter") return;
            event.preventDefault();
            openDesk(panel.id);
          }}
          title={strip.desk.open}
        >
          <b>{common.pose[panel.pose]}</b>
          <span className={styles.sides}>
            <SideSign side={panel.weightOn} />
            <PlaceSign panel={panel} roomy={width >= ROOMY} />
          </span>
        </button>
      </header>
      <Paper panel={panel} view="side" width={width} mayDraw={mayDraw} />
      <Paper panel={panel} view="front" width={width} mayDraw={mayDraw} />
      <span className={styles.badge}>
        <RemarkBadge panelId={panel.id} />
        <KeptBadge panelId={panel.id} />
        <RedrawBadge panel={panel} />
      </span>
    </article>
  );
});
