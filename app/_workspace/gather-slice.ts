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
  /** What is gathered next comes to what is gathered already. */
  readonly gatherAdds: boolean;
  readonly gathered: Gathered | null;
  /** The other paper that gathered strokes are held over. */
  readonly gatherOver: PaperName | null;
  setGatherBy(way: "lasso" | "box"): void;
  setGatherAdds(adds: boolean): void;
  gather(gathered: Gathered | null): void;
  holdOver(paper: PaperName | null): void;
}

export const createGatherSlice: StateCreator<Workspace, [], [], GatherSlice> = (set) => ({
  gatherBy: "lasso",
  gatherAdds: false,
  gathered: null,
  gatherOver: null,
  setGatherBy: (gatherBy) => set({ gatherBy }),
  setGatherAdds: (gatherAdds) => set({ gatherAdds }),
  // Once nothing is gathered there is nothing to add to.
  gather: (gathered) => set(gathered === null ? { gathered, gatherAdds: false } : { gathered }),
  holdOver: (gatherOver) => set({ gatherOver }),
});
