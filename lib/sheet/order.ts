import { POSES } from "../motion";
import type { InkStroke, Panel } from "./sheet";

type Placed = Pick<Panel, "id" | "frame" | "pose">;

/**
 * Panels along the ruler: by frame; on one frame by pose as a step runs, so that a down never stands
 * before the contact it belongs to; then id. Order is data, so everyone has the same.
 */
export function byFrame(a: Placed, b: Placed): number {
  return a.frame - b.frame || POSES.indexOf(a.pose) - POSES.indexOf(b.pose) || byId(a, b);
}

/** Strokes as they lie on each other: by z, then id. */
export function byHeight(a: InkStroke, b: InkStroke): number {
  return a.z - b.z || byId(a, b);
}

function byId(a: { readonly id: string }, b: { readonly id: string }): number {
  return a.id < b.id ? -1 : a.id > b.id ? 1 : 0;
}
