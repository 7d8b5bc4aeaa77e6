import type { StateCreator } from "zustand";
import type { NewTempo, TimeScope } from "../../lib/sheet";
import type { Workspace } from "./workspace";

/** New times that are shown on the ruler and not written yet. */
export type Timing =
  | { readonly what: "even-out"; readonly scope: TimeScope }
  | { readonly what: "retime"; readonly tempo: NewTempo };

/** What this person is about to do with the strip's times. */
export interface TimeSlice {
  readonly timing: Timing | null;
  setTiming(timing: Timing | null): void;
}

export const createTimeSlice: StateCreator<Workspace, [], [], TimeSlice> = (set) => ({
  timing: null,
  setTiming: (timing) => set(timing === null ? { timing } : { timing, fixing: null }),
});
