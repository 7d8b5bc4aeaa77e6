import type { View } from "../../lib/geometry";
import type { Panel } from "../../lib/sheet";
import { type BitmapSize, contextOf, paintPose } from "../_paper";

const MOST_POSES = 160; // bitmaps kept; a longer strip paints its poses again as they come round

/** Poses as pixels, so that playing only puts down what is painted already. */
export interface PoseShelf {
  get(panel: Panel, view: View, size: BitmapSize): HTMLCanvasElement;
  /** Paints ahead what is not there yet, a pose a piece (see `paintQueue`). */
  prepare(panels: readonly Panel[], view: View, size: BitmapSize): Generator<void, void>;
}

export function createPoseShelf(): PoseShelf {
  const speck = document.createElement("canvas");
  speck.width = 1;
  speck.height = 1;
  const shelf = new Map<string, { readonly of: Panel; readonly canvas: HTMLCanvasElement }>();
  function get(panel: Panel, view: View, size: BitmapSize): HTMLCanvasElement {
    const key = `${panel.id} ${view} ${size.width}`;
    const kept = shelf.get(key);
    if (kept?.of === panel) return kept.canvas;
    const canvas = document.createElement("canvas");
    canvas.width = size.width;
    canvas.height = size.height;
    const context = contextOf(canvas);
    context.scale(size.scale, size.scale);
    paintPose(context, panel, view, size.scale);
    // Browsers put strokes down only when the canvas is looked at: look now, not at its frame.
    contextOf(speck).drawImage(canvas, 0, 0, 1, 1);
    const [oldest] = shelf.keys();
    if (shelf.size >= MOST_POSES && oldest !== undefined) shelf.delete(oldest);
    shelf.delete(key);
    shelf.set(key, { of: panel, canvas });
    return canvas;
  }

  return {
    get,
    *prepare(panels, view, size) {
      for (const panel of panels.slice(0, MOST_POSES)) {
        get(panel, view, size);
        yield;
      }
    },
  };
}
