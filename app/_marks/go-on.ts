import type { Room } from "../_room";
import type { PaperName, WorkspaceStore } from "../_workspace";
import { quickSetDone } from "./proposals";
import { whereNext } from "./where-next";

/**
 * Does something to the marks of a paper, and, when that completes the view's quick set, takes the next
 * paper in hand.
 */
export function markAndGoOn(
  { sheet }: Room,
  workspace: WorkspaceStore,
  paper: PaperName,
  mark: () => void,
): void {
  const done = () => {
    const panel = sheet.getSnapshot().panels.find(({ id }) => id === paper.panel);
    return panel !== undefined && quickSetDone(panel.marks[paper.view], paper.view);
  };
  const before = done();
  mark();
  if (before || !done()) return;
  const { onward, moveOn } = workspace.getState();
  const next = whereNext(sheet.getSnapshot().panels, paper, onward);
  if (next === null) return;
  moveOn(next);
  bringNear(next);
}

/**
 * Once undo has taken a mark from the paper that the prompt came from, the prompt goes back to it. Nothing
 * happens when the hand has gone elsewhere meanwhile.
 */
export function goBack({ sheet, undo }: Room, workspace: WorkspaceStore): void {
  const { panel, view, movedOn, moveBack } = workspace.getState();
  const last = movedOn.at(-1);
  if (last === undefined || !undo.canRedo()) return; // it was not undo that changed the sheet
  if (panel !== last.to.panel || view !== last.to.view) return;
  const from = sheet.getSnapshot().panels.find(({ id }) => id === last.from.panel);
  if (from === undefined || quickSetDone(from.marks[last.from.view], last.from.view)) return;
  moveBack();
  bringNear(last.from);
}

/** The paper that is marked next is brought into sight, as little as it takes. */
function bringNear({ panel, view }: PaperName): void {
  requestAnimationFrame(() => {
    const paper = `[data-panel="${CSS.escape(panel)}"][data-view="${view}"]`;
    document.querySelector(paper)?.scrollIntoView({ block: "nearest", inline: "nearest" });
  });
}
