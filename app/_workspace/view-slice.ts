import type { StateCreator } from "zustand";
import type { Workspace } from "./workspace";

/** Zoom of the strip: 1 fits the whole strip into the window. */
export const ZOOM = { least: 0.25, most: 12, step: 1.25 } as const;

/** How this person looks at the sheet. Nobody else sees it; reloading forgets it. */
export interface ViewSlice {
  readonly zoom: number;
  readonly deskZoom: number;
  /** Panels seen through the paper. */
  readonly onionSkin: { readonly before: number; readonly after: number };
  readonly marksShown: boolean;
  /** Small windows fold the margin away; on large ones it stands open. */
  readonly marginOpen: boolean;
  setZoom(zoom: number): void;
  setDeskZoom(zoom: number): void;
  setOnionSkin(before: number, after: number): void;
  showMarks(shown: boolean): void;
  openMargin(open: boolean): void;
}

const clampZoom = (zoom: number): number => Math.min(ZOOM.most, Math.max(ZOOM.least, zoom));

export const createViewSlice: StateCreator<Workspace, [], [], ViewSlice> = (set) => ({
  zoom: 1,
  deskZoom: 1,
  onionSkin: { before: 1, after: 0 },
  marksShown: true,
  marginOpen: false,
  setZoom: (zoom) => set({ zoom: clampZoom(zoom) }),
  setDeskZoom: (zoom) => set({ deskZoom: clampZoom(zoom) }),
  setOnionSkin: (before, after) => set({ onionSkin: { before, after } }),
  showMarks: (marksShown) => set({ marksShown }),
  openMargin: (marginOpen) => set({ marginOpen }),
});
