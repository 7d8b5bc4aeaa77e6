"use client";
import { useEffect, useRef } from "react";
import { addPanel } from "../../lib/sheet";
import { FOOTFALLS_PX, FootfallsChart, GapRow, HipChart } from "../_charts";
import { Button } from "../_controls";
import { FixBar, GhostColumn, useFixGhosts } from "../_fixes";
import { PlayButton, PlayStage } from "../_play";
import { freshPanelId, useMayDraw, useRoom, useSheet } from "../_room";
import { TimeBar, useFeetToBe } from "../_time";
import { strip } from "../_words";
import { useWorkspace } from "../_workspace";
import { bringIntoSight } from "./in-sight";
import { PanelColumn } from "./panel-column";
import { Ruler } from "./ruler";
import styles from "./stage.module.css";
import { Stems } from "./stems";
import { STRIP, stripGeometry } from "./strip-geometry";
import { useFeet } from "./use-feet";
import { useHipsToDraw } from "./use-hips-to-draw";
import { usePanAndZoom } from "./use-pan-and-zoom";
import { useSize } from "./use-size";
import { useSteadyPanels } from "./use-steady-panels";
import { ZoomButtons } from "./zoom-buttons";

const HIPS = { least: 70, most: 220 }; // px; it takes what the papers leave
const BELOW_FIXED = 204 + FOOTFALLS_PX; // stems, ruler, feet, gaps, zoom and the spaces between them, px

/** The strip: panels hung from the ruler, and the charts on the same frames. */
export function Stage() {
  const scroller = useRef<HTMLElement>(null);
  const size = useSize(scroller);
  const panels = useSteadyPanels();
  const zoom = useWorkspace((workspace) => workspace.zoom);
  const setZoom = useWorkspace((workspace) => workspace.setZoom);
  const grabs = useWorkspace((workspace) => workspace.tool === "paper");
  const playing = useWorkspace((workspace) => workspace.playing);
  usePanAndZoom({ ref: scroller, zoom, setZoom, grabs });

  const timed = useFeetToBe();
  const fix = useFixGhosts();
  const feetToBe = timed.size > 0 ? timed : fix.feet;
  const hung =
    fix.added.length === 0 ? panels : [...panels, ...fix.added].sort((a, b) => a.frame - b.frame);
  const numbered = useSheet((sheet) => sheet.head.firstFrame !== undefined);
  const rulerHeight =
    STRIP.ruler + (numbered ? STRIP.shot : 0) + (feetToBe.size > 0 ? STRIP.ghosts : 0);
  const below = BELOW_FIXED + rulerHeight - STRIP.ruler;
  const space = { width: size.width, height: size.height - below - HIPS.least };
  const resting = stripGeometry(
    hung.map((panel) => panel.frame),
    space,
    zoom,
    Math.max(0, ...feetToBe.values()),
  );
  const feet = useFeet(resting);
  const { geometry } = feet;
  const papersHeight = STRIP.header + 2 * geometry.paperHeight + STRIP.gap;
  const spare = size.height - papersHeight - below;
  const drawn = useHipsToDraw();
  const hipsHeight = drawn ? Math.max(HIPS.least, Math.min(HIPS.most, spare)) : HIPS.least;
  const mayDraw = useMayDraw();
  usePointedOut();

  return (
    <div className={styles.frame}>
      <section
        ref={scroller}
        className={styles.stage}
        aria-label={strip.stage}
        data-grabs={grabs}
        data-scroller
      >
        <div
          className={styles.world}
          data-desk
          style={{ width: Math.max(geometry.width, size.width) }}
        >
          <div className={styles.columns} data-desk style={{ height: papersHeight }}>
            <RowNames paperHeight={geometry.paperHeight} />
            {hung.map((panel, index) =>
              fix.added.includes(panel) ? (
                <GhostColumn
                  key={panel.id}
                  panel={panel}
                  left={geometry.columnX(index)}
                  width={geometry.paperWidth}
                  paperHeight={geometry.paperHeight}
                />
              ) : (
                <PanelColumn
                  key={panel.id}
                  panel={panel}
                  left={geometry.columnX(index)}
                  width={geometry.paperWidth}
                  mayDraw={mayDraw}
                />
              ),
            )}
            {panels.length === 0 && <EmptyStrip mayDraw={mayDraw} />}
          </div>
          <div className={styles.below}>
            <Stems
              panels={hung}
              added={fix.added}
              geometry={geometry}
              frameOf={feet.frameOf}
              feetToBe={feetToBe}
            />
            <div className={styles.rulerRow} style={{ height: rulerHeight }}>
              <span className={styles.play}>
                <PlayButton />
              </span>
              <Ruler
                panels={panels}
                added={fix.added}
                geometry={geometry}
                feet={feet}
                feetToBe={feetToBe}
                height={rulerHeight}
                mayDraw={mayDraw}
              />
              {numbered && (
                <span className={styles.shotName} aria-hidden="true">
                  {strip.shot}
                </span>
              )}
            </div>
            <HipChart xOfFrame={geometry.frameX} width={geometry.width} height={hipsHeight} />
            <FootfallsChart xOfFrame={geometry.frameX} width={geometry.width} />
            <GapRow xOfFrame={geometry.frameX} width={geometry.width} />
          </div>
        </div>
      </section>
      <div className={styles.zoom}>
        <ZoomButtons zoom={zoom} setZoom={setZoom} />
      </div>
      <TimeBar />
      <FixBar />
      {playing && <PlayStage />}
    </div>
  );
}

/** A remark that is pointed out is brought into sight. */
function usePointedOut() {
  const remark = useWorkspace((workspace) => workspace.remark);
  const panel = useWorkspace((workspace) => workspace.panel);
  useEffect(() => {
    if (remark !== null && panel !== null) bringIntoSight(panel);
  }, [remark, panel]);
}

function RowNames({ paperHeight }: { readonly paperHeight: number }) {
  return (
    <div className={styles.rowNames} aria-hidden="true">
      <span style={{ top: STRIP.header + paperHeight * 0.5 }}>{strip.rows.side}</span>
      <span style={{ top: STRIP.header + STRIP.gap + paperHeight * 1.5 }}>{strip.rows.front}</span>
    </div>
  );
}

function EmptyStrip({ mayDraw }: { readonly mayDraw: boolean }) {
  const room = useRoom();
  const add = () =>
    addPanel(room.drawing, freshPanelId(), { frame: 1, pose: "contact", weightOn: "left" });
  return (
    <p className={styles.empty}>
      {strip.empty} {mayDraw && <Button onClick={add}>{strip.emptyAdd}</Button>}
    </p>
  );
}
