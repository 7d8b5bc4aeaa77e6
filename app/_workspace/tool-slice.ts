import type { StateCreator } from "zustand";
import type { JointName } from "../../lib/body";
import type { Nib } from "../../lib/ink";
import type { Workspace } from "./workspace";

/** What is in the hand. `gather` takes strokes together; `paper` moves the paper, never touches it. */
export type Tool = "draw" | "rub-out" | "mark" | "gather" | "paper";

/** What this person holds, in this tab. */
export interface ToolSlice {
  readonly tool: Tool;
  readonly nib: Nib;
  /** Rubbing takes away what the rubber touches, instead of whole strokes. */
  readonly rubPart: boolean;
  /** The joint that the next tap of the mark tool places; null: the tool proposes one. */
  readonly joint: JointName | null;
  /** True from pen down to pen up: nothing is said and nothing is measured meanwhile. */
  readonly penDown: boolean;
  take(tool: Tool): void;
  takeNib(nib: Nib): void;
  setRubPart(part: boolean): void;
  takeJoint(joint: JointName | null): void;
  setPenDown(down: boolean): void;
}

/** Whoever takes a tool lets go of the picture under the paper. */
const LET_GO = { pictureHeld: false, pictureDraft: null } as const;

export const createToolSlice: StateCreator<Workspace, [], [], ToolSlice> = (set) => ({
  tool: "draw",
  nib: "fine",
  rubPart: false,
  joint: null,
  penDown: false,
  take: (tool) => set({ tool, ...LET_GO }),
  takeNib: (nib) => set({ tool: "draw", nib, ...LET_GO }),
  setRubPart: (rubPart) => set({ rubPart }),
  takeJoint: (joint) => set({ joint }),
  setPenDown: (penDown) => set({ penDown }),
});
