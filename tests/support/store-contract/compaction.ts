import { describe, expect, it } from "vitest";
import * as Y from "yjs";
import { type DrawnDocument, drawnDocument, sameDocument } from "../drawn-document";
import { batchOf, type StoreCase } from "./case";

/** Many updates put into one snapshot, and nothing else different. */
export function describeCompaction(the: StoreCase): void {
  const compact = (documentId: number, rows = 200, by = "one") =>
    the.store.compact({ documentId, by, at: 5, atLeast: { rows, bytes: 1e9 } });
  const load = async ({ sheet }: DrawnDocument) => {
    const loaded = await the.store.loadDocument(sheet, "drawing");
    if (loaded === null) throw new Error("the document is there");
    return loaded;
  };

  describe("compaction", () => {
    it("puts a document into one piece, and it stays the same", async () => {
      const drawn = await drawnDocument(the.store);
      await drawn.draw(300);
      expect(await compact(drawn.documentId)).toMatchObject({ outcome: "compacted", rows: 301 });
      const loaded = await load(drawn);
      expect(loaded).toMatchObject({ head: 301, generation: 1, damagedSnapshots: 0 });
      expect(loaded.updates).toHaveLength(1);
      expect(sameDocument(loaded.updates, drawn.updates)).toBe(true);
    });

    it("is done again and again, and what is drawn in between comes after the snapshot", async () => {
      const drawn = await drawnDocument(the.store);
      for (let round = 1; round <= 4; round++) {
        const { stored } = await drawn.draw(50);
        expect(stored[0]?.tailRows).toBe(round === 1 ? 51 : 50);
        expect((await load(drawn)).updates).toHaveLength(51);
        expect(await compact(drawn.documentId, 50)).toMatchObject({ outcome: "compacted" });
        const loaded = await load(drawn);
        expect(sameDocument(loaded.updates, drawn.updates)).toBe(true);
        expect(loaded.head).toBe(round * 50 + 1);
      }
      const { stored } = await drawn.draw(1);
      const loaded = await load(drawn);
      expect(stored[0]).toMatchObject({ tailRows: 1, size: loaded.size });
    });

    it("leaves alone what is short, unless its bytes are many, and what there is not", async () => {
      const drawn = await drawnDocument(the.store);
      await drawn.draw(100);
      expect(await compact(drawn.documentId)).toEqual({ outcome: "short" });
      expect(await compact(999_999)).toEqual({ outcome: "short" });
      const order = { documentId: drawn.documentId, by: "one", at: 5 };
      const heavy = { rows: 1e9, bytes: 1000 };
      expect(await the.store.compact({ ...order, atLeast: heavy })).toMatchObject({
        outcome: "compacted",
      });
      expect(await the.store.compact({ ...order, atLeast: { rows: 0, bytes: 0 } })).toEqual({
        outcome: "short",
      });
    });

    it("keeps every update where one builds on something that is not there", async () => {
      const drawn = await drawnDocument(the.store);
      await drawn.draw(10);
      const stranger = new Y.Doc();
      stranger.getMap("strokes").set("a", 1);
      const before = Y.encodeStateVector(stranger);
      stranger.getMap("strokes").set("b", 2);
      const bytes = Y.encodeStateAsUpdate(stranger, before);
      const update = { documentId: drawn.documentId, generation: 1, at: 1, bytes };
      await the.store.appendUpdates(batchOf([update]));
      expect(await compact(drawn.documentId, 1)).toEqual({ outcome: "unsound" });
      expect((await load(drawn)).updates).toEqual([...drawn.updates, bytes]);
    });

    it("loses nothing of what is drawn while it is at work", async () => {
      const drawn = await drawnDocument(the.store);
      await drawn.draw(500);
      const drawing = (async () => {
        for (let times = 0; times < 20; times++) await drawn.draw(5);
      })();
      const outcomes = await Promise.all([
        compact(drawn.documentId),
        compact(drawn.documentId, 200, "two"),
      ]);
      await drawing;
      expect(outcomes.map(({ outcome }) => outcome)).toContain("compacted");
      await compact(drawn.documentId, 1);
      const loaded = await load(drawn);
      expect(loaded.head).toBe(drawn.updates.length);
      expect(sameDocument(loaded.updates, drawn.updates)).toBe(true);
    });
  });
}
