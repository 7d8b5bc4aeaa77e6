import type { StateCreator } from "zustand";
import type { View } from "../../lib/geometry";
import type { PanelId } from "../../lib/sheet";
import type { Workspace } from "./workspace";

/** What this person has in hand on the sheet. */
export interface SelectionSlice {
  readonly panel: PanelId | null;
  readonly view: View;
  /** The drawing desk: one panel fills the window. It shows the panel in hand. */
  readonly desk: boolean;
  /** The remark whose place is being pointed out (index in the review's ranked list), or null. */
  readonly remark: number | null;
  /** The remark that the hand or the focus passes in the margin: drawn whole while it does, like one pointed out. */
  readonly glance: number | null;
  pickPanel(panel: PanelId | null, view?: View): void;
  openDesk(panel: PanelId): void;
  leaveDesk(): void;
  pointOut(remark: number | null): void;
  glanceAt(remark: number | null): void;
}

export const createSelectionSlice: StateCreator<Workspace, [], [], SelectionSlice> = (set) => ({
  panel: null,
  view: "side",
  desk: false,
  remark: null,
  glance: null,
  pickPanel: (panel, view) =>
    set(({ fitting }) => ({
      panel,
      ...(view === undefined ? {} : { view }),
      fitting: panel === fitting ? fitting : null,
    })),
  openDesk: (panel) => set({ panel, desk: true, deskZoom: 1 }),
  leaveDesk: () => set({ desk: false }),
  pointOut: (remark) => set({ remark }),
  glanceAt: (glance) => set({ glance }),
});
