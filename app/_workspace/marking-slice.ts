import type { StateCreator } from "zustand";
import type { PanelId } from "../../lib/sheet";
import type { PaperName } from "./gather-slice";
import type { Workspace } from "./workspace";

/** The prompt went from a paper whose quick set was done to the next. */
export interface MovedOn {
  readonly from: PaperName;
  readonly to: PaperName;
}

/** How this person marks. */
export interface MarkingSlice {
  /** Where the prompt goes once a view's quick set is done. */
  readonly onward: "next-panel" | "other-view";
  /** What goes along when a mark is dragged: that mark alone, or the figure it is a joint of. */
  readonly dragging: "joint" | "figure";
  /** The way the prompt has come, so that undo can go back along it; the latest last. */
  readonly movedOn: readonly MovedOn[];
  /** The panel whose figure was just placed and is being fitted to its ink: until another is in hand. */
  readonly fitting: PanelId | null;
  setOnward(onward: MarkingSlice["onward"]): void;
  setDragging(dragging: MarkingSlice["dragging"]): void;
  fit(panel: PanelId): void;
  /** Takes the next paper in hand. */
  moveOn(to: PaperName): void;
  /** Takes the paper in hand again that the prompt came from. */
  moveBack(): void;
}

export const createMarkingSlice: StateCreator<Workspace, [], [], MarkingSlice> = (set) => ({
  onward: "next-panel",
  dragging: "joint",
  movedOn: [],
  fitting: null,
  setOnward: (onward) => set({ onward }),
  setDragging: (dragging) => set({ dragging }),
  fit: (fitting) => set({ fitting }),
  moveOn: (to) =>
    set(({ panel, view, movedOn, fitting }) => ({
      ...to,
      joint: null,
      fitting: to.panel === panel ? fitting : null,
      movedOn: panel === null ? movedOn : [...movedOn, { from: { panel, view }, to }],
    })),
  moveBack: () =>
    set(({ movedOn }) => {
      const last = movedOn.at(-1);
      return last === undefined ? {} : { ...last.from, movedOn: movedOn.slice(0, -1) };
    }),
});
