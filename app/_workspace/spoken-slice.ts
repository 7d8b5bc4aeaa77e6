import type { StateCreator } from "zustand";
import type { Workspace } from "./workspace";

/** What a screen reader is to be told of this person's own doing. */
export interface SpokenSlice {
  /** `turn` counts what was said: the same words twice are two things. */
  readonly said: { readonly text: string; readonly turn: number };
  say(text: string): void;
}

export const createSpokenSlice: StateCreator<Workspace, [], [], SpokenSlice> = (set) => ({
  said: { text: "", turn: 0 },
  say: (text) => set(({ said }) => ({ said: { text, turn: said.turn + 1 } })),
});
