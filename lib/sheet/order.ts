import type { InkStroke, Panel } from "./sheet";

/** Panels along the ruler: by frame, then id. Order is data, so everyone has the same. */
export function byFrame(a: Pick<Panel, "id" | "frame">, b: Pick<Panel, "id" | "frame">): number {
  return a.frame - b.frame || byId(a, b);
}

/** Strokes as they lie on each other: by z, then id. */
export function byHeight(a: InkStroke, b: InkStroke): number {
  return a.z - b.z || byId(a, b);
}

function byId(a: { readonly id: string }, b: { readonly id: string }): number {
  return a.id < b.id ? -1 : a.id > b.id ? 1 : 0;
}
