"use client";
import { useRef } from "react";
import { Button } from "../_controls";
import { FixBar } from "../_fixes";
import { neighbour, PlayStage } from "../_play";
import { useMayDraw, usePanel, useRoom } from "../_room";
import { common, strip } from "../_words";
import { useWorkspace } from "../_workspace";
import styles from "./desk.module.css";
import { Paper } from "./paper";
import { Ribbon } from "./ribbon";
import { SideSign } from "./side-sign";
import { PAPER_RATIO } from "./strip-geometry";
import { usePanAndZoom } from "./use-pan-and-zoom";
import { useSize } from "./use-size";
import { ZoomButtons, type ZoomButtonsProps } from "./zoom-buttons";

const EDGE = 20; // px around and between the papers

/** One panel fills the window for drawing: both views large, the strip as a ribbon below. */
export function Desk() {
  const scroller = useRef<HTMLElement>(null);
  const size = useSize(scroller);
  const id = useWorkspace((workspace) => workspace.panel);
  const zoom = useWorkspace((workspace) => workspace.deskZoom);
  const setZoom = useWorkspace((workspace) => workspace.setDeskZoom);
  const grabs = useWorkspace((workspace) => workspace.tool === "paper");
  const playing = useWorkspace((workspace) => workspace.playing);
  const panel = usePanel(id);
  const mayDraw = useMayDraw();
  usePanAndZoom({ ref: scroller, zoom, setZoom, grabs });

  const sideBySide = (size.width - 3 * EDGE) / 2;
  const alone = size.width - 2 * EDGE;
  // A narrow window stacks the views and fits one at a time.
  const narrow = size.width < 560;
  const fits = Math.min(narrow ? alone : sideBySide, (size.height - 2 * EDGE) / PAPER_RATIO);
  const width = Math.max(120, Math.floor(fits)) * zoom;
  return (
    <div className={styles.desk}>
      <DeskHead zoom={zoom} setZoom={setZoom} />
      <section
        ref={scroller}
        className={styles.table}
        aria-label={strip.desk.name}
        tabIndex={0} // it scrolls, and has nothing in it that keys could scroll it by
        data-grabs={grabs}
        data-scroller
        data-desk
      >
        {panel !== undefined && (
          <div className={styles.papers} data-narrow={narrow} data-desk>
            <Paper panel={panel} view="side" width={width} mayDraw={mayDraw} />
            <Paper panel={panel} view="front" width={width} mayDraw={mayDraw} />
          </div>
        )}
      </section>
      <FixBar />
      <Ribbon />
      {playing && <PlayStage />}
    </div>
  );
}

function DeskHead({ zoom, setZoom }: ZoomButtonsProps) {
  const room = useRoom();
  const id = useWorkspace((workspace) => workspace.panel);
  const pickPanel = useWorkspace((workspace) => workspace.pickPanel);
  const leaveDesk = useWorkspace((workspace) => workspace.leaveDesk);
  const panel = usePanel(id);
  const flip = (by: -1 | 1) => {
    const next = id === null ? null : neighbour(room.sheet.getSnapshot(), id, by);
    if (next !== undefined && next !== null) pickPanel(next.id);
  };
  return (
    <header className={styles.head}>
      <Button small onClick={leaveDesk}>
        {strip.desk.back}
      </Button>
      {panel !== undefined && (
        <h2>
          {common.pose[panel.pose]} <SideSign side={panel.weightOn} />
          <span>{common.frame(panel.frame)}</span>
        </h2>
      )}
      <div className={styles.flip}>
        <Button small aria-label={strip.desk.before} onClick={() => flip(-1)}>
          ←
        </Button>
        <Button small aria-label={strip.desk.after} onClick={() => flip(1)}>
          →
        </Button>
      </div>
      <div className={styles.zoom}>
        <ZoomButtons zoom={zoom} setZoom={setZoom} />
      </div>
    </header>
  );
}
