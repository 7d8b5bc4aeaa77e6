import { type Bounds, type InkColour, type Shaping, UNSHAPED } from "../../lib/ink";
import { type InkStroke, rubOut, transformStrokes } from "../../lib/sheet";
import type { Room } from "../_room";
import type { Gathered, PaperName, WorkspaceStore } from "../_workspace";
import { boxRound, middleOf } from "./gather-box";

/** The gathered strokes that are still there. */
export function gatheredStrokes(room: Room, gathered: Gathered | null): readonly InkStroke[] {
  if (gathered === null) return [];
  const { panels } = room.sheet.getSnapshot();
  const ink = panels.find(({ id }) => id === gathered.panel)?.ink[gathered.view] ?? [];
  const ids = new Set(gathered.ids);
  return ink.filter(({ id }) => ids.has(id));
}

const now = (room: Room, workspace: WorkspaceStore): readonly InkStroke[] =>
  gatheredStrokes(room, workspace.getState().gathered);

const idsOf = (strokes: readonly InkStroke[]): string[] => strokes.map(({ id }) => id);

/** Shapes what is gathered, and takes it to another paper where one is named: one step of undo. */
export function shapeGathered(
  room: Room,
  workspace: WorkspaceStore,
  shaping: Shaping,
  to: PaperName | null = null,
): void {
  const ids = idsOf(now(room, workspace));
  if (ids.length === 0) return;
  transformStrokes(room.drawing, ids, { shaping, ...(to ?? {}) });
  if (to === null) return;
  workspace.getState().gather({ ...to, ids });
  workspace.getState().pickPanel(to.panel, to.view);
}

/** Shapes what is gathered about its own middle. */
export function shapeAboutMiddle(
  room: Room,
  workspace: WorkspaceStore,
  change: Partial<Pick<Shaping, "scale" | "turn" | "by">>,
): void {
  const box: Bounds | null = boxRound(now(room, workspace));
  if (box === null) return;
  shapeGathered(room, workspace, { ...UNSHAPED, about: middleOf(box), ...change });
}

export function recolourGathered(room: Room, workspace: WorkspaceStore, colour: InkColour): void {
  const ids = idsOf(now(room, workspace));
  if (ids.length > 0) transformStrokes(room.drawing, ids, { colour });
}

/** Rubs out what is gathered. Answers whether there was anything. */
export function rubOutGathered(room: Room, workspace: WorkspaceStore): boolean {
  const ids = idsOf(now(room, workspace));
  if (workspace.getState().tool !== "gather" || ids.length === 0) return false;
  rubOut(room.drawing, ids);
  workspace.getState().gather(null);
  return true;
}

/** Lets go of what is gathered. Answers whether there was anything in the hand. */
export function letGo(room: Room, workspace: WorkspaceStore): boolean {
  const held = workspace.getState().tool === "gather" && now(room, workspace).length > 0;
  if (held) workspace.getState().gather(null);
  return held;
}
