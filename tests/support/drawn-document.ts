import * as Y from "yjs";
import { newSheetId } from "../../server/access/secret";
import type { Store } from "../../server/store/store";
import type { SheetId } from "../../shared/sheet-id";
import { batchOf, newSheetOf } from "./store-contract/case";

/** A drawing in a store, drawn as a page would, and known here in whole. */
export interface DrawnDocument {
  readonly sheet: SheetId;
  readonly documentId: number;
  /** So many updates: strokes, and now and then the erasing of the newest. Answers how the document stands. */
  draw(updates: number): ReturnType<Store["appendUpdates"]>;
  /** Every update in order, as it was drawn. */
  readonly updates: readonly Uint8Array[];
}

export async function drawnDocument(store: Store): Promise<DrawnDocument> {
  const doc = new Y.Doc();
  const updates: Uint8Array[] = [];
  doc.on("update", (update: Uint8Array) => updates.push(update));
  doc.getMap("sheet").set("title", "drawn");
  const [first] = updates;
  if (first === undefined) throw new Error("a title is an update");
  const sheet = newSheetId();
  const plain = newSheetOf(sheet);
  await store.createSheet({ ...plain, documents: { ...plain.documents, drawing: first } });
  const documentId = (await store.loadDocument(sheet, "drawing"))?.documentId ?? 0;
  const strokes = doc.getMap("strokes");
  return {
    ...{ sheet, documentId, updates },
    draw(count) {
      const before = updates.length;
      while (updates.length - before < count) {
        const newest = `stroke ${updates.length - 1}`;
        if (updates.length % 5 === 0 && strokes.has(newest)) strokes.delete(newest);
        else strokes.set(`stroke ${updates.length}`, new Uint8Array(40).fill(updates.length));
      }
      const fresh = updates.slice(before);
      return store.appendUpdates(
        batchOf(fresh.map((bytes) => ({ documentId, generation: 1, at: 1, bytes }))),
      );
    },
  };
}

/** Do these updates make the same document? Told by all that was written and all that was erased. */
export function sameDocument(a: readonly Uint8Array[], b: readonly Uint8Array[]): boolean {
  const [one, other] = [snapshotOf(a), snapshotOf(b)];
  return Y.equalSnapshots(one.snapshot, other.snapshot) && one.content === other.content;
}

function snapshotOf(updates: readonly Uint8Array[]) {
  const doc = new Y.Doc();
  for (const update of updates) Y.applyUpdate(doc, update);
  const content = JSON.stringify([doc.getMap("sheet").toJSON(), doc.getMap("strokes").toJSON()]);
  return { snapshot: Y.snapshot(doc), content };
}
