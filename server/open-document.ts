import * as Y from "yjs";
import { encodeSync, SYNC } from "../shared/protocol";

/** A document in memory, from which everything that changes it comes out as bytes. */
export interface OpenDocument {
  readonly doc: Y.Doc;
  /** What preparing it changed. */
  readonly prepared: readonly Uint8Array[];
  /** What is stored and stands on something that is not: it is kept in the store, and shown to nobody. */
  readonly hasGap: boolean;
  /** What the document emitted while it took the update; null if it is not sound any more. */
  take(update: Uint8Array): Uint8Array[] | null;
  /** A frame with the whole of it, encoded once for all who come in the same moment. */
  whole(): Uint8Array;
}

/** Errors: whatever `prepare` throws. */
export function openDocument(
  updates: readonly Uint8Array[],
  prepare: (doc: Y.Doc) => void,
): OpenDocument {
  const doc = new Y.Doc();
  // One transaction for all of them: half the time of one each.
  doc.transact(() => {
    for (const update of updates) Y.applyUpdate(doc, update);
  });
  const { store } = doc;
  const isWhole = () => store.pendingStructs === null && store.pendingDs === null;
  const hasGap = !isWhole();
  // Else every update to come would look as if it had left the document unsound.
  store.pendingStructs = null;
  store.pendingDs = null;
  let emitted: Uint8Array[] = [];
  let encoded: Uint8Array | null = null;
  doc.on("update", (update: Uint8Array) => {
    emitted.push(update);
    encoded = null;
  });
  try {
    prepare(doc);
  } catch (error) {
    doc.destroy();
    throw error;
  }
  return {
    ...{ doc, hasGap },
    prepared: emitted,
    take(update) {
      emitted = [];
      try {
        Y.applyUpdate(doc, update);
      } catch {
        return null;
      }
      return isWhole() ? emitted : null;
    },
    whole() {
      encoded ??= encodeSync(SYNC.step2, Y.encodeStateAsUpdate(doc));
      return encoded;
    },
  };
}
