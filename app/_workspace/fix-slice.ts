import type { StateCreator } from "zustand";
import type { Remark } from "../../lib/gait";
import type { Workspace } from "./workspace";

/** The remark whose fix this person is looking at before it is done. */
export interface FixSlice {
  readonly fixing: Remark | null;
  /** Shows a remark's fix, or leaves it; nothing else is shown as a ghost beside it. */
  showFix(remark: Remark | null): void;
}

export const createFixSlice: StateCreator<Workspace, [], [], FixSlice> = (set) => ({
  fixing: null,
  showFix: (fixing) => set(fixing === null ? { fixing } : { fixing, passOn: null, timing: null }),
});
