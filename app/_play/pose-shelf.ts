import type { View } from "../../lib/geometry";
import type { Panel } from "../../lib/sheet";
import { type BitmapSize, contextOf, paintPose } from "../_paper";

const MOST_POSES = 160; // bitmaps kept; a longer strip paints its poses again as they come round

/** Poses as pixels, so that playing only puts down what is painted already. */
export interface PoseShelf {
  get(panel: Panel, view: View, size: BitmapSize): HTMLCanvasElement;
}

export function createPoseShelf(): PoseShelf {
  const shelf = new Map<string, { readonly of: Panel; readonly canvas: HTMLCanvasElement }>();
  return {
    get(panel, view, size) {
      const key = `${panel.id} ${view} ${size.width}`;
      const kept = shelf.get(key);
      if (kept?.of === panel) return kept.canvas;
      const canvas = document.createElement("canvas");
      canvas.width = size.width;
      canvas.height = size.height;
      const context = contextOf(canvas);
      context.scale(size.scale, size.scale);
      paintPose(context, panel, view, size.scale);
      const [oldest] = shelf.keys();
      if (shelf.size >= MOST_POSES && oldest !== undefined) shelf.delete(oldest);
      shelf.delete(key);
      shelf.set(key, { of: panel, canvas });
      return canvas;
    },
  };
}
