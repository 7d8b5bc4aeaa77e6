import type { Room } from "../_room";
import type { WorkspaceStore } from "../_workspace";
import { letGo, rubOutGathered, shapeAboutMiddle } from "./gather-deeds";

/** A press goes two pixels, with Shift ten times as far; scaling and turning go by small steps. */
const NUDGE_PX = 2;
const FAR = 10;
export const GROW = 1.05;
export const TURN = Math.PI / 90; // radians: 2°

const WAYS: Readonly<Record<string, readonly [x: number, y: number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

export interface KeyPress {
  readonly key: string;
  readonly shiftKey: boolean;
}

/**
 * What a key does to the gathered strokes, each press one step of undo. Answers whether it did
 * anything. `pixel`: panel units a CSS pixel.
 */
export function pressGathered(
  room: Room,
  workspace: WorkspaceStore,
  { key, shiftKey }: KeyPress,
  pixel: number,
): boolean {
  const way = WAYS[key];
  if (way !== undefined) {
    const far = NUDGE_PX * pixel * (shiftKey ? FAR : 1);
    shapeAboutMiddle(room, workspace, { by: { x: way[0] * far, y: way[1] * far } });
    return true;
  }
  if (key === "Delete" || key === "Backspace") return rubOutGathered(room, workspace);
  if (key === "Escape") return letGo(room, workspace);
  const change = SHAPES[key];
  if (change === undefined) return false;
  shapeAboutMiddle(room, workspace, change);
  return true;
}

const SHAPES: Readonly<Record<string, { readonly scale?: number; readonly turn?: number }>> = {
  "+": { scale: GROW },
  "=": { scale: GROW },
  "-": { scale: 1 / GROW },
  ",": { turn: -TURN },
  ".": { turn: TURN },
};
