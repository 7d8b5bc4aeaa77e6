import type { StateCreator } from "zustand";
import type { JointName } from "../../lib/body";
import type { Nib } from "../../lib/ink";
import type { Workspace } from "./workspace";

/** What is in the hand. `paper` moves the paper and never touches it. */
export type Tool = "draw" | "rub-out" | "mark" | "paper";

/** What this person holds, in this tab. */
export interface ToolSlice {
  readonly tool: Tool;
  readonly nib: Nib;
  /** The joint that the next tap of the mark tool places; null: the tool proposes one. */
  readonly joint: JointName | null;
  /** True from pen down to pen up: nothing is said and nothing is measured meanwhile. */
  readonly penDown: boolean;
  take(tool: Tool): void;
  takeNib(nib: Nib): void;
  takeJoint(joint: JointName | null): void;
  setPenDown(down: boolean): void;
}

export const createToolSlice: StateCreator<Workspace, [], [], ToolSlice> = (set) => ({
  tool: "draw",
  nib: "fine",
  joint: null,
  penDown: false,
  take: (tool) => set({ tool }),
  takeNib: (nib) => set({ tool: "draw", nib }),
  takeJoint: (joint) => set({ joint }),
  setPenDown: (penDown) => set({ penDown }),
});
