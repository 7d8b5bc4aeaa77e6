import { createStore, type StoreApi } from "zustand/vanilla";
import { createFixSlice, type FixSlice } from "./fix-slice";
import { createGatherSlice, type GatherSlice } from "./gather-slice";
import { createMarkingSlice, type MarkingSlice } from "./marking-slice";
import { createPassOnSlice, type PassOnSlice } from "./pass-on-slice";
import { createPlaySlice, type PlaySlice } from "./play-slice";
import { createReferenceSlice, type ReferenceSlice } from "./reference-slice";
import { createSelectionSlice, type SelectionSlice } from "./selection-slice";
import { createSpokenSlice, type SpokenSlice } from "./spoken-slice";
import { createTimeSlice, type TimeSlice } from "./time-slice";
import { createToolSlice, type ToolSlice } from "./tool-slice";
import { createViewSlice, type ViewSlice } from "./view-slice";

export type Workspace = ToolSlice &
  ViewSlice &
  SelectionSlice &
  PlaySlice &
  TimeSlice &
  PassOnSlice &
  FixSlice &
  GatherSlice &
  ReferenceSlice &
  SpokenSlice &
  MarkingSlice;
export type WorkspaceStore = StoreApi<Workspace>;

/** One for each open sheet, made by the room: no React, no Yjs, no timers in it. */
export function createWorkspace(): WorkspaceStore {
  return createStore<Workspace>()((...slice) => ({
    ...createToolSlice(...slice),
    ...createViewSlice(...slice),
    ...createSelectionSlice(...slice),
    ...createPlaySlice(...slice),
    ...createTimeSlice(...slice),
    ...createPassOnSlice(...slice),
    ...createFixSlice(...slice),
    ...createGatherSlice(...slice),
    ...createReferenceSlice(...slice),
    ...createSpokenSlice(...slice),
    ...createMarkingSlice(...slice),
  }));
}
