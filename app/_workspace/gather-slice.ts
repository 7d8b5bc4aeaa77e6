import type { StateCreator } from "zustand";
import type { View } from "../../lib/geometry";
import type { PanelId, StrokeId } from "../../lib/sheet";
import type { Workspace } from "./workspace";

/** A paper: one view of one panel. */
export interface PaperName {
  readonly panel: PanelId;
  readonly view: View;
}

/** Strokes of one paper that are taken together. */
export interface Gathered extends PaperName {
  readonly ids: readonly StrokeId[];
}

/** What this person has gathered, and how. */
export interface GatherSlice {
  readonly gatherBy: "lasso" | "box";
  readonly gathered: Gathered | null;
  /** The other paper that gathered strokes are held over. */
  readonly gatherOver: PaperName | null;
  setGatherBy(way: "lasso" | "box"): void;
  gather(gathered: Gathered | null): void;
  holdOver(paper: PaperName | null): void;
}

export const createGatherSlice: StateCreator<Workspace, [], [], GatherSlice> = (set) => ({
  gatherBy: "lasso",
  gathered: null,
  gatherOver: null,
  setGatherBy: (gatherBy) => set({ gatherBy }),
  gather: (gathered) => set({ gathered }),
  holdOver: (gatherOver) => set({ gatherOver }),
});
