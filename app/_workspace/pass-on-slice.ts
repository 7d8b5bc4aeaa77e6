import type { StateCreator } from "zustand";
import type { Side } from "../../lib/body";
import type { PanelId } from "../../lib/sheet";
import type { Workspace } from "./workspace";

/** What can be put on the panel in hand: a figure made for it, or what other panels have. */
export const PASS_ONS = [
  "figure",
  "copy-pose",
  "copy-foot",
  "mirror-pose",
  "footprint",
  "shift-body",
] as const;
export type PassOnDeed = (typeof PASS_ONS)[number];

/** Something that is shown as a ghost and not done yet. */
export interface PassOnRequest {
  readonly deed: PassOnDeed;
  /** Where it comes from; null: the panel that is usual for it. */
  readonly from: PanelId | null;
  /** Whose foot; null: the one that carries the weight. */
  readonly side: Side | null;
  readonly ink: boolean;
  /** Where the body goes: shares of a leg, forward and up from the side, aside from ahead. */
  readonly forward: number;
  readonly up: number;
  readonly aside: number;
}

/** What this person is about to pass on. */
export interface PassOnSlice {
  readonly passOn: PassOnRequest | null;
  /** What was passed on last, until something else is asked for. */
  readonly passedOn: PassOnDeed | null;
  askPassOn(deed: PassOnDeed): void;
  changePassOn(changes: Partial<Omit<PassOnRequest, "deed">>): void;
  leavePassOn(done?: PassOnDeed): void;
}

const FRESH = { from: null, side: null, ink: false, forward: 0, up: 0, aside: 0 } as const;

export const createPassOnSlice: StateCreator<Workspace, [], [], PassOnSlice> = (set) => ({
  passOn: null,
  passedOn: null,
  askPassOn: (deed) => set({ passOn: { ...FRESH, deed }, passedOn: null, fixing: null }),
  changePassOn: (changes) =>
    set(({ passOn }) => (passOn === null ? {} : { passOn: { ...passOn, ...changes } })),
  leavePassOn: (done) => set({ passOn: null, passedOn: done ?? null }),
});
