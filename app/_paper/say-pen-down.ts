import type { Room } from "../_room";
import type { WorkspaceStore } from "../_workspace";

/** From pen down to pen up nothing is measured and nothing is remarked. */
export function sayPenDown(room: Room, workspace: WorkspaceStore, down: boolean): void {
  workspace.getState().setPenDown(down);
  if (down) room.review.hold();
  else room.review.release();
}
