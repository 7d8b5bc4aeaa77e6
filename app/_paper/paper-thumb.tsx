"use client";
import { memo, useEffect, useRef } from "react";
import type { LayerProps } from "../_workspace";
import { bitmapSize } from "./bitmap-size";
import { contextOf } from "./ink-bitmap";
import { paintPose } from "./paint-pose";
import { paintQueue } from "./paint-queue";
import styles from "./paper-thumb.module.css";
import { usePixelRatio } from "./use-pixel-ratio";

/** A view of a panel, small and still: its ink, or its limbs. */
export const PaperThumb = memo(function PaperThumb(props: Omit<LayerProps, "mayDraw">) {
  const { panel, view, width } = props;
  const canvas = useRef<HTMLCanvasElement>(null);
  const ratio = usePixelRatio();
  useEffect(() => {
    const target = canvas.current;
    if (target === null) return;
    paintQueue.add(target, paintThumb(target, { panel, view, width }, ratio));
    return () => paintQueue.drop(target);
  }, [panel, view, width, ratio]);
  return <canvas ref={canvas} className={styles.thumb} style={{ width }} />;
});

/** One piece of work: a thumb has few pixels. */
function* paintThumb(
  canvas: HTMLCanvasElement,
  { panel, view, width }: Omit<LayerProps, "mayDraw">,
  ratio: number,
): Generator<void, void> {
  const size = bitmapSize(width, ratio);
  canvas.width = size.width;
  canvas.height = size.height;
  const context = contextOf(canvas);
  context.scale(size.scale, size.scale);
  paintPose(context, panel, view, size.scale);
  yield;
}
