"use client";
import { useMemo } from "react";
import type { UndoStack } from "../../lib/sheet";
import type { Store } from "../_room";

export interface UndoState {
  readonly canUndo: boolean;
  readonly canRedo: boolean;
}

/** Whether there is anything of one's own to undo or redo, as a store that React can follow. */
export function useUndoState(undo: UndoStack): Store<UndoState> {
  return useMemo(() => {
    let last: UndoState = { canUndo: undo.canUndo(), canRedo: undo.canRedo() };
    return {
      get() {
        const now = { canUndo: undo.canUndo(), canRedo: undo.canRedo() };
        if (now.canUndo !== last.canUndo || now.canRedo !== last.canRedo) last = now;
        return last;
      },
      subscribe: (onChange) => undo.subscribe(onChange),
    };
  }, [undo]);
}
