import { VIEWS } from "../../lib/geometry";
import type { Room } from "../_room";
import type { WorkspaceStore } from "../_workspace";
import { doPassOn } from "./do-pass-on";

/**
 * Places a figure on the panel in hand, and takes the mark tool to fit it with: at once where nothing is
 * marked, else shown as a ghost first, since it would replace what is. Where it cannot be placed, the
 * form stays open and says what is needed.
 */
export function placeFigure(room: Room, workspace: WorkspaceStore): void {
  const { panel: id, askPassOn, take, setDragging } = workspace.getState();
  const panel = room.sheet.getSnapshot().panels.find((one) => one.id === id);
  if (panel === undefined) return;
  const bare = VIEWS.every((view) => Object.keys(panel.marks[view]).length === 0);
  take("mark");
  setDragging("figure");
  askPassOn("figure");
  if (bare) doPassOn(room, workspace);
}
