import type { StateCreator } from "zustand";
import type { Workspace } from "./workspace";

/** Playing the strip: this person's own, nobody else sees it. */
export interface PlaySlice {
  readonly playing: boolean;
  /** Speed as a share of the sheet's own: 1, ½, ¼. */
  readonly speed: number;
  /** How often the loop is run before play begins again at the strip's start; null is for ever. */
  readonly cycles: 1 | 2 | 4 | null;
  /** The frame under the playhead while playing, else null. */
  readonly playFrame: number | null;
  play(playing: boolean): void;
  setSpeed(speed: number): void;
  setCycles(cycles: PlaySlice["cycles"]): void;
  setPlayFrame(frame: number | null): void;
}

export const createPlaySlice: StateCreator<Workspace, [], [], PlaySlice> = (set) => ({
  playing: false,
  speed: 1,
  cycles: null,
  playFrame: null,
  play: (playing) => set(playing ? { playing } : { playing, playFrame: null }),
  setSpeed: (speed) => set({ speed }),
  setCycles: (cycles) => set({ cycles }),
  setPlayFrame: (playFrame) => set({ playFrame }),
});
