import type { JointName, Mark, ViewMarks } from "../../lib/body";
import type { Point, View } from "../../lib/geometry";
import { type Panel, type PanelId, placeMark, placeMarks } from "../../lib/sheet";
import type { Room } from "../_room";
import type { WorkspaceStore } from "../_workspace";
import { markAndGoOn } from "./go-on";
import { guessedMark, guessedQuickSet } from "./guess";
import { coarsest, legOn, markPrecision } from "./mark-precision";
import { promptedJoint } from "./prompt";

interface Prompted {
  readonly panel: Panel;
  readonly view: View;
  readonly joint: JointName;
}

/** What the prompt asks for on the paper in hand, if anything. */
function prompted({ sheet }: Room, workspace: WorkspaceStore): Prompted | null {
  const { panel: id, view, joint: taken, tool } = workspace.getState();
  if (tool !== "mark") return null;
  const panel = sheet.getSnapshot().panels.find((one) => one.id === id);
  const joint = panel === undefined ? null : promptedJoint(panel.marks[view], view, taken);
  return panel === undefined || joint === null ? null : { panel, view, joint };
}

/**
 * Puts the prompted joint where its guess is shown, or where that was brought to. Answers which joint it
 * was; null where nothing is prompted.
 */
export function acceptGuess(
  room: Room,
  workspace: WorkspaceStore,
  brought: Point | null = null,
): JointName | null {
  const asked = prompted(room, workspace);
  if (asked === null) return null;
  const { panel, view, joint } = asked;
  const guess = guessedMark(room.sheet.getSnapshot(), panel, view, joint);
  // One who looked and says that it is there is as exact as one who taps it.
  const { x, y } = brought ?? guess;
  const mark: Mark = { x, y, precision: precisionOn(room, panel.id, view) };
  markAndGoOn(room, workspace, { panel: panel.id, view }, () => {
    placeMark(room.drawing, panel.id, view, joint, mark);
    workspace.getState().takeJoint(null);
  });
  return joint;
}

/** Puts a joint that nobody asked for where it is guessed, as rough as a mark may be. */
export function placeAsGuessed(room: Room, workspace: WorkspaceStore, joint: JointName): void {
  const { panel: id, view, takeJoint } = workspace.getState();
  const sheet = room.sheet.getSnapshot();
  const panel = sheet.panels.find((one) => one.id === id);
  if (panel === undefined) return;
  const { x, y } = guessedMark(sheet, panel, view, joint);
  placeMark(room.drawing, panel.id, view, joint, {
    x,
    y,
    precision: coarsest(legOn(sheet.panels)),
  });
  takeJoint(null);
}

/** Puts all that the quick set still lacks on the paper in hand where it is guessed: one step of undo. */
export function acceptAllGuesses(room: Room, workspace: WorkspaceStore): boolean {
  const asked = prompted(room, workspace);
  if (asked === null) return false;
  const { panel, view } = asked;
  const guesses = guessedQuickSet(room.sheet.getSnapshot(), panel, view);
  if (Object.keys(guesses).length === 0) return false;
  markAndGoOn(room, workspace, { panel: panel.id, view }, () => {
    placeMarks(room.drawing, panel.id, { side: {}, front: {}, [view]: rough(room, guesses) });
    workspace.getState().takeJoint(null);
  });
  return true;
}

/** Nobody has looked at each of them: they are as rough as a mark may be. */
function rough({ sheet }: Room, guesses: ViewMarks): ViewMarks {
  const most = coarsest(legOn(sheet.getSnapshot().panels));
  return Object.fromEntries(
    Object.entries(guesses).map(([joint, mark]) => [
      joint,
      { ...mark, precision: Math.max(mark.precision, most) },
    ]),
  );
}

/** How exactly marks are placed on a paper as it is seen now; as rough as may be where it is not seen. */
function precisionOn({ sheet }: Room, panel: PanelId, view: View): number {
  const paper = `[data-panel="${CSS.escape(panel)}"][data-view="${view}"]`;
  const width = document.querySelector(paper)?.getBoundingClientRect().width ?? 0;
  const leg = legOn(sheet.getSnapshot().panels);
  return width > 0 ? markPrecision(width, leg) : coarsest(leg);
}
