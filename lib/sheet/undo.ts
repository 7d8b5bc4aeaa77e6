import * as Y from "yjs";
import { CRITIQUE, DRAWING, ORIGIN } from "./schema";

/** This person's own undo and redo. */
export interface UndoStack {
  /** Takes back the last thing this hand did that can still be taken back. False: there was none. */
  undo(): boolean;
  /** Does again what `undo` took back, until the hand does something new. */
  redo(): boolean;
  canUndo(): boolean;
  canRedo(): boolean;
  subscribe(onChange: () => void): () => void;
  close(): void;
}

type StackItem = Y.UndoManager["undoStack"][number];
type Stack = "undoStack" | "redoStack";

/** Every top part that either document has: what is not listed cannot be undone. */
const PARTS = [...new Set([...Object.values(DRAWING), ...Object.values(CRITIQUE)])];

/**
 * Undo for one person over several documents, in the one order things were done in. Only what came by
 * `ORIGIN.hand` is taken back, each transaction a step of its own. What others changed later stands:
 * a step that has nothing left to take back is passed over. Whoever opens it closes it.
 */
export function openUndo(docs: readonly Y.Doc[]): UndoStack {
  const listeners = new Set<() => void>();
  const tell = (): void => {
    for (const listener of [...listeners]) listener();
  };
  const turns = new WeakMap<StackItem, number>(); // when each step was made, over all documents
  let turn = 0;
  let stepping = false;
  const managers = docs.map(managerOf);
  for (const manager of managers) {
    manager.on("stack-item-added", ({ stackItem }) => {
      turns.set(stackItem, ++turn);
      manager.stopCapturing(); // also when the clock is set back: never two steps in one
      // A new deed leaves nothing to do again, in the other documents neither.
      if (!stepping) for (const other of managers) other.clear(false, true);
      if (!stepping) tell();
    });
  }
  /** The document whose last step is the latest. */
  const latest = (stack: Stack): Y.UndoManager | null => {
    const turnOf = (manager: Y.UndoManager): number => {
      const top = manager[stack].at(-1);
      return top === undefined ? 0 : (turns.get(top) ?? 0);
    };
    const best = managers.reduce<Y.UndoManager | null>(
      (so, one) => (turnOf(one) > (so === null ? 0 : turnOf(so)) ? one : so),
      null,
    );
    return best;
  };
  const step = (stack: Stack): boolean => {
    stepping = true;
    try {
      for (let manager = latest(stack); manager !== null; manager = latest(stack)) {
        if (stepOnce(manager, stack)) return true;
      }
      return false;
    } finally {
      stepping = false;
      tell();
    }
  };
  return {
    undo: () => step("undoStack"),
    redo: () => step("redoStack"),
    canUndo: () => latest("undoStack") !== null,
    canRedo: () => latest("redoStack") !== null,
    subscribe(onChange) {
      const listener = () => onChange();
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    close() {
      for (const manager of managers) manager.destroy();
      listeners.clear();
    },
  };
}

function managerOf(doc: Y.Doc): Y.UndoManager {
  const parts = PARTS.map((name) => doc.getMap(name));
  const panels = doc.getMap(DRAWING.panels);
  return new Y.UndoManager(parts, {
    captureTimeout: 0,
    trackedOrigins: new Set([ORIGIN.hand]),
    // A panel's map stays even when its making is undone: others may have drawn and marked in it.
    deleteFilter: (item) => !(item.parent === panels && item.content instanceof Y.ContentType),
  });
}

/**
 * One step of one document. Yjs goes on to earlier steps when one has no effect, which would leave
 * the order over several documents: so it is shown the last step alone.
 */
function stepOnce(manager: Y.UndoManager, stack: Stack): boolean {
  const earlier = manager[stack].splice(0, Math.max(0, manager[stack].length - 1));
  const done = stack === "undoStack" ? manager.undo() : manager.redo();
  manager[stack].unshift(...earlier);
  return done !== null;
}
