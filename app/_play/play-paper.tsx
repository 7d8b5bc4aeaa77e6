"use client";
import { useEffect, useLayoutEffect, useMemo, useRef, useState } from "react";
import type { View } from "../../lib/geometry";
import type { Panel } from "../../lib/sheet";
import { bitmapSize, contextOf, paintQueue, usePixelRatio } from "../_paper";
import { common } from "../_words";
import styles from "./play.module.css";
import { createPoseShelf } from "./pose-shelf";

export interface PlayPaperProps {
  readonly panel: Panel | undefined;
  /** All that will come round, so that each is painted before its turn. */
  readonly panels: readonly Panel[];
  readonly view: View;
}

/** Pixels of one pose at play, and of all that are kept: 4 bytes each. */
const MOST_PIXELS = 1_200_000;
const MOST_PIXELS_KEPT = 30_000_000;

/** One view at play: puts down the pixels of the pose that is on. */
export function PlayPaper({ panel, panels, view }: PlayPaperProps) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const shelf = useMemo(createPoseShelf, []);
  const ratio = usePixelRatio();
  const [width, setWidth] = useState(0);
  useEffect(() => {
    const target = canvas.current;
    if (target === null) return;
    const watcher = new ResizeObserver(() => setWidth(target.clientWidth));
    watcher.observe(target);
    return () => watcher.disconnect();
  }, []);
  const most = Math.min(MOST_PIXELS, MOST_PIXELS_KEPT / Math.max(1, panels.length));
  const size = useMemo(
    () => (width === 0 ? null : bitmapSize(width, ratio, most)),
    [width, ratio, most],
  );
  useEffect(() => {
    if (size === null) return;
    paintQueue.add(shelf, shelf.prepare(panels, view, size));
    return () => paintQueue.drop(shelf);
  }, [shelf, panels, view, size]);
  useLayoutEffect(() => {
    const target = canvas.current;
    if (target === null || size === null) return;
    if (target.width !== size.width) target.width = size.width;
    if (target.height !== size.height) target.height = size.height;
    const context = contextOf(target);
    context.clearRect(0, 0, size.width, size.height);
    if (panel !== undefined) context.drawImage(shelf.get(panel, view, size), 0, 0);
  }, [panel, view, size, shelf]);
  return (
    <figure className={styles.paper} aria-label={common.view[view]}>
      <span className={styles.ground} aria-hidden="true" />
      <canvas ref={canvas} />
    </figure>
  );
}
