"use client";
import { memo, type PointerEvent } from "react";
import type { View } from "../../lib/geometry";
import type { Panel } from "../../lib/sheet";
import { FixLayer, RedrawLayer } from "../_fixes";
import { GatherLayer } from "../_gather";
import { InkLayer } from "../_ink";
import { MarkLayer } from "../_marks";
import { GhostLayer } from "../_pass-on";
import { PencilLayer } from "../_people";
import { KeptLayer } from "../_purpose";
import { PictureMover, ReferenceLayer } from "../_reference";
import { RemarkLayer } from "../_remarks";
import { useRoom } from "../_room";
import { common, strip } from "../_words";
import { useWorkspace, useWorkspaceStore } from "../_workspace";
import { viewTold } from "./panel-told";
import styles from "./paper.module.css";
import { PAPER_RATIO } from "./strip-geometry";

export interface PaperProps {
  readonly panel: Panel;
  readonly view: View;
  /** CSS pixels. */
  readonly width: number;
  readonly mayDraw: boolean;
}

const UNITS_ACROSS = 720; // panel units across a view

/** One view of one panel: paper, and what lies on it, from the ink up to the others' pencils. */
export const Paper = memo(function Paper({ panel, view, width, mayDraw }: PaperProps) {
  const room = useRoom();
  const workspace = useWorkspaceStore();
  const inHand = useWorkspace((now) => now.panel === panel.id && now.view === view);
  const marksShown = useWorkspace((now) => now.marksShown || now.tool === "mark");
  const blank =
    panel.ink[view].length === 0 &&
    Object.keys(panel.marks[view]).length === 0 &&
    panel.pictures[view] === null;
  const asking = useWorkspace((now) => now.tool === "mark") && inHand;
  const layer = { panel, view, width, mayDraw };

  const pick = () => {
    const now = workspace.getState();
    if (now.panel !== panel.id || now.view !== view) now.pickPanel(panel.id, view);
  };
  const point = (event: PointerEvent<HTMLElement>) => {
    const box = event.currentTarget.getBoundingClientRect();
    const scale = UNITS_ACROSS / box.width;
    room.people.point({
      panel: panel.id,
      view,
      x: (event.clientX - box.left) * scale,
      y: (event.clientY - box.top) * scale,
    });
  };
  return (
    <figure
      className={styles.paper}
      style={{ width, height: width * PAPER_RATIO }}
      data-in-hand={inHand}
      data-panel={panel.id}
      data-view={view}
      aria-label={strip.papers.name(common.pose[panel.pose], panel.frame, common.view[view])}
      aria-description={viewTold(panel, view)}
      onPointerDownCapture={pick}
      onPointerMove={point}
      onPointerLeave={() => room.people.point(null)}
    >
      {blank && mayDraw && !asking && (
        <span className={styles.invite}>{common.pose[panel.pose]}</span>
      )}
      <span className={styles.ground} aria-hidden="true" />
      <ReferenceLayer {...layer} />
      <InkLayer {...layer} />
      {marksShown && <MarkLayer {...layer} />}
      <GatherLayer {...layer} />
      <RedrawLayer {...layer} />
      <GhostLayer {...layer} />
      <FixLayer {...layer} />
      <KeptLayer {...layer} />
      <RemarkLayer {...layer} />
      <PencilLayer {...layer} />
      <PictureMover {...layer} />
    </figure>
  );
});
