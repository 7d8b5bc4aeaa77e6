"use client";
import { useEffect, useLayoutEffect, useMemo, useRef, useState } from "react";
import type { View } from "../../lib/geometry";
import type { Panel } from "../../lib/sheet";
import { bitmapSize, contextOf, usePixelRatio } from "../_paper";
import { common } from "../_words";
import styles from "./play.module.css";
import { createPoseShelf } from "./pose-shelf";

export interface PlayPaperProps {
  readonly panel: Panel | undefined;
  readonly view: View;
}

const MOST_PIXELS = 1_200_000; // a pose at play: sharp enough, and light enough for a long strip

/** One view at play: puts down the pixels of the pose that is on. */
export function PlayPaper({ panel, view }: PlayPaperProps) {
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
  useLayoutEffect(() => {
    const target = canvas.current;
    if (target === null || width === 0) return;
    const size = bitmapSize(width, ratio, MOST_PIXELS);
    if (target.width !== size.width) target.width = size.width;
    if (target.height !== size.height) target.height = size.height;
    const context = contextOf(target);
    context.clearRect(0, 0, size.width, size.height);
    if (panel !== undefined) context.drawImage(shelf.get(panel, view, size), 0, 0);
  }, [panel, view, width, ratio, shelf]);
  return (
    <figure className={styles.paper} aria-label={common.view[view]}>
      <span className={styles.ground} aria-hidden="true" />
      <canvas ref={canvas} />
    </figure>
  );
}
