import { type PanelId, removePanel } from "../../lib/sheet";
import type { Room } from "../_room";
import { strip } from "../_words";
import type { WorkspaceStore } from "../_workspace";
import { beside } from "./panel-beside";

/** Removes a panel, takes the one beside it in hand, and says so. */
export function removeAndSay(room: Room, workspace: WorkspaceStore, panel: PanelId): void {
  const next = beside(room.sheet.getSnapshot(), panel);
  removePanel(room.drawing, panel);
  workspace.getState().pickPanel(next);
  workspace.getState().say(strip.said.removed);
}

/** Takes back one's own last step, and says so where there was one. */
export function undoAndSay(room: Room, workspace: WorkspaceStore): void {
  if (room.undo.undo()) workspace.getState().say(strip.said.undone);
}

/** Does again what was taken back, and says so where there was something. */
export function redoAndSay(room: Room, workspace: WorkspaceStore): void {
  if (room.undo.redo()) workspace.getState().say(strip.said.redone);
}
