"use client";
import { memo, useEffect, useLayoutEffect, useMemo, useRef } from "react";
import { bitmapSize, handOf, useOnScreen, usePixelRatio } from "../_paper";
import { useRoom } from "../_room";
import { type LayerProps, type Tool, useWorkspace, useWorkspaceStore } from "../_workspace";
import styles from "./ink.module.css";
import { OnionSkin } from "./onion-skin";
import { openPaperInk, type PaperInk } from "./paper-ink";
import { type Deed, listenToPen } from "./pen-listener";

const deedOf = (tool: Tool, mayDraw: boolean): Deed | null =>
  mayDraw && (tool === "draw" || tool === "rub-out") ? tool : null;

/** The ink of one paper, and the pen on it. Pointer events never pass through React. */
export const InkLayer = memo(function InkLayer({ panel, view, width, mayDraw }: LayerProps) {
  const room = useRoom();
  const workspace = useWorkspaceStore();
  const deed = useWorkspace(({ tool }) => deedOf(tool, mayDraw));
  const inHand = useWorkspace((now) => now.panel === panel.id);
  const layer = useRef<HTMLDivElement>(null);
  const stored = useRef<HTMLCanvasElement>(null);
  const live = useRef<HTMLCanvasElement>(null);
  const paper = useRef<PaperInk>(null);
  const onScreen = useOnScreen(layer);
  const ratio = usePixelRatio();
  const size = useMemo(() => bitmapSize(width, ratio), [width, ratio]);
  const { id } = panel;
  const ink = panel.ink[view];

  useLayoutEffect(() => {
    if (stored.current === null || live.current === null) return;
    const opened = openPaperInk({
      ...{ room, workspace, panel: id, view },
      stored: stored.current,
      live: live.current,
    });
    paper.current = opened;
    return () => {
      opened.close();
      paper.current = null;
    };
  }, [room, workspace, id, view]);

  useLayoutEffect(() => {
    if (onScreen) paper.current?.show(ink, size);
    else paper.current?.rest();
  }, [onScreen, ink, size]);

  useEffect(() => {
    if (layer.current === null || !mayDraw) return;
    return listenToPen(layer.current, {
      hand: handOf(room),
      deed: () => deedOf(workspace.getState().tool, true),
      begin: (what, first) => {
        if (paper.current === null) throw new Error("the pen met a paper that was not laid out");
        return paper.current.begin(what, first);
      },
    });
  }, [room, workspace, mayDraw]);

  const classes = [styles.layer];
  if (deed !== null) classes.push(styles.atWork, deed === "draw" ? styles.draw : styles.rubOut);
  return (
    <div ref={layer} className={classes.join(" ")} aria-hidden="true">
      {inHand && onScreen ? <OnionSkin panel={id} view={view} size={size} /> : null}
      <canvas ref={stored} className={styles.canvas} />
      <canvas ref={live} className={styles.canvas} />
    </div>
  );
});
