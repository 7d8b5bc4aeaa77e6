import { applyFix } from "../../lib/sheet";
import { freshPanelId, type Room } from "../_room";
import { fixes as words } from "../_words";
import type { WorkspaceStore } from "../_workspace";
import { shownFix } from "./shown-fix";

/** Does the fix that is shown, as one step of undo, and says so. Answers whether it was done. */
export function doFix(room: Room, workspace: WorkspaceStore): boolean {
  const { fixing, showFix, pointOut, say } = workspace.getState();
  const shown = shownFix(room.sheet.getSnapshot(), room.review.get(), fixing);
  if (shown === null) return false;
  applyFix(room.drawing, shown.fix, freshPanelId);
  showFix(null);
  pointOut(null);
  say(words.done(shown.fix.title));
  return true;
}
