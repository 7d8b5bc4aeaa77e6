import { describe, expect, it } from "vitest";
import { newSheetId } from "../../../server/access/secret";
import { StoreError } from "../../../server/store/store-error";
import { STORE_LIMITS } from "../../../shared/limits";
import { BYTES, batchOf, device, newSheetOf, type StoreCase } from "./case";

/** What is drawn, and how it comes back. */
export function describeDocuments(the: StoreCase): void {
  const drawing = () => the.store.loadDocument(the.sheet, "drawing");

  describe("documents", () => {
    it("are given back with their first bytes", async () => {
      const loaded = await drawing();
      const critique = await the.store.loadDocument(the.sheet, "critique");
      expect(loaded).toMatchObject({ generation: 1, head: 1, size: 1, damagedSnapshots: 0 });
      expect(loaded?.updates).toEqual([Uint8Array.of(1)]);
      expect(critique?.updates).toEqual([Uint8Array.of(2)]);
      expect(loaded?.documentId).not.toBe(critique?.documentId);
    });

    it("are null where there is no sheet", async () => {
      expect(await the.store.loadDocument(newSheetId(), "drawing")).toBeNull();
    });

    it("are made with their sheet, whole or not at all", async () => {
      const other = newSheetId();
      const [link] = newSheetOf(other).links;
      if (link === undefined) throw new Error("a sheet has links");
      const twice = { ...newSheetOf(other), links: [link, link] };
      await expect(the.store.createSheet(twice)).rejects.toThrow(StoreError);
      expect(await the.store.loadDocument(other, "drawing")).toBeNull();
    });

    it("keep updates whole, in their order, each in its own document", async () => {
      const [first, second] = [await the.documentId(), await the.documentId("critique")];
      const updates = Array.from({ length: 300 }, (_, index) => ({
        ...{ documentId: index % 3 === 0 ? second : first, generation: 1, at: index },
        bytes: Uint8Array.of(index & 255, index >> 8, ...BYTES),
      }));
      await the.store.appendUpdates(batchOf(updates.slice(0, 10)));
      const { stored, refused } = await the.store.appendUpdates(batchOf(updates.slice(10)));
      expect(refused).toEqual([]);
      const bytes = 200 * 7;
      expect(stored[0]).toEqual({
        ...{ documentId: first, head: 201, size: 1 + bytes },
        ...{ tailRows: 201, tailBytes: 1 + bytes },
      });
      const of = (id: number) => updates.filter((u) => u.documentId === id).map((u) => u.bytes);
      expect((await drawing())?.updates.slice(1)).toEqual(of(first));
      const other = await the.store.loadDocument(the.sheet, "critique");
      expect(other?.updates.slice(1)).toEqual(of(second));
    });

    it("take a batch whole or not at all", async () => {
      const sound = { documentId: await the.documentId(), generation: 1, at: 1, bytes: BYTES };
      const nothing = null as unknown as Uint8Array; // the tables take no row without bytes
      const batch = batchOf([sound, { ...sound, bytes: BYTES }]);
      const broken = batchOf([sound, { ...sound, at: nothing as unknown as number }]);
      await expect(the.store.appendUpdates(broken)).rejects.toThrow(StoreError);
      expect((await drawing())?.updates).toHaveLength(1);
      await the.store.appendUpdates(batch); // and it works on, after what has been undone
      expect((await drawing())?.updates).toHaveLength(3);
    });

    it("take a batch that is tried again once", async () => {
      const update = { documentId: await the.documentId(), generation: 1, at: 1, bytes: BYTES };
      const batch = batchOf([update, update]);
      const once = await the.store.appendUpdates(batch);
      expect(await the.store.appendUpdates(batch)).toEqual(once);
      expect(await drawing()).toMatchObject({ head: 3, size: 11 });
      await the.store.appendUpdates(batchOf([update]));
      expect(await drawing()).toMatchObject({ head: 4, size: 16 });
    });

    it("take nothing from a room of an older generation, and everything for other documents", async () => {
      const [id, critique] = [await the.documentId(), await the.documentId("critique")];
      const before = { generation: 1, at: 1, bytes: BYTES };
      const other = newSheetId();
      await the.store.createSheet(newSheetOf(other));
      const elsewhere = (await the.store.loadDocument(other, "drawing"))?.documentId ?? 0;
      const raised = await the.store.raiseGeneration(the.sheet, device(1), 1000);
      expect(raised).toBe(1000);
      const batch = batchOf([
        { ...before, documentId: id },
        { ...before, documentId: elsewhere },
        { ...before, documentId: critique },
        { ...before, documentId: id, generation: 1000 },
      ]);
      const outcome = await the.store.appendUpdates(batch);
      expect(outcome.stored.map(({ documentId }) => documentId).sort()).toEqual(
        [id, elsewhere].sort(),
      );
      const late = { generation: 1, reason: "generation-changed" };
      expect(outcome.refused).toEqual([
        { ...late, documentId: id },
        { ...late, documentId: critique },
      ]);
      expect(await the.store.appendUpdates(batch)).toEqual(outcome);
      expect(await drawing()).toMatchObject({ generation: 1000, head: 2 });
    });

    it("have a generation that only rises, and none where there is no sheet", async () => {
      expect(await the.store.raiseGeneration(the.sheet, null, 50)).toBe(50);
      expect(await the.store.raiseGeneration(the.sheet, null, 50)).toBe(51);
      expect(await the.store.raiseGeneration(the.sheet, null, 7)).toBe(52);
      expect((await the.store.loadDocument(the.sheet, "critique"))?.generation).toBe(52);
      expect(await the.store.raiseGeneration(newSheetId(), null, 50)).toBeNull();
    });

    it("refuse what is appended to a document that there is not", async () => {
      const nowhere = { documentId: 999_999, generation: 1, at: 1, bytes: BYTES };
      const { stored, refused } = await the.store.appendUpdates(batchOf([nowhere]));
      expect(stored).toEqual([]);
      expect(refused).toEqual([
        { documentId: 999_999, generation: 1, reason: "generation-changed" },
      ]);
    });
  });

  describe("client ids", () => {
    const largest = 2 ** 32 - 1;

    it("belong to the first device that writes under them, in one document", async () => {
      await the.append([BYTES], { claims: [{ client: largest, device: device(1) }] });
      await the.append([BYTES], {
        claims: [
          { client: largest, device: device(1) },
          { client: 7, device: device(2) },
        ],
      });
      const owners = (await drawing())?.owners.toSorted((a, b) => b.client - a.client);
      expect(owners).toEqual([
        { client: largest, device: device(1) },
        { client: 7, device: device(2) },
      ]);
      expect((await the.store.loadDocument(the.sheet, "critique"))?.owners).toEqual([]);
    });

    it("are not given to a second device, and nothing of what came with the claim is stored", async () => {
      await the.append([BYTES], { claims: [{ client: 7, device: device(1) }] });
      const stolen = { client: 7, device: device(2) };
      const { stored, refused } = await the.append([BYTES, BYTES], {
        claims: [{ client: 8, device: device(2) }, stolen],
      });
      expect(stored).toEqual([]);
      expect(refused).toMatchObject([{ reason: "claimed-by-another" }]);
      expect(await drawing()).toMatchObject({
        head: 2,
        owners: [{ client: 7, device: device(1) }],
      });
    });
  });

  describe("the quarantine", () => {
    it("keeps what a document could not take, the newest first, and the beginning of what is long", async () => {
      const documentId = await the.documentId();
      const long = new Uint8Array(STORE_LIMITS.quarantinedBytes + 10).fill(9);
      const item = { documentId, at: 5, device: device(1), reason: "it threw", bytes: BYTES };
      await the.store.quarantine(item);
      await the.store.quarantine({ ...item, device: null, bytes: long });
      const lies = await the.store.listQuarantine(documentId);
      expect(lies.map(({ size }) => size)).toEqual([long.length, BYTES.length]);
      expect(lies[0]?.bytes).toEqual(long.slice(0, STORE_LIMITS.quarantinedBytes));
      expect(lies[1]).toEqual({ ...item, size: BYTES.length });
    });

    it("lets the oldest go, of one document alone", async () => {
      const documentId = await the.documentId();
      const other = { documentId: await the.documentId("critique"), at: 0, device: null };
      await the.store.quarantine({ ...other, reason: "stays", bytes: BYTES });
      for (let at = 0; at < STORE_LIMITS.quarantined + 3; at++) {
        await the.store.quarantine({ documentId, at, device: null, reason: "", bytes: BYTES });
      }
      const lies = await the.store.listQuarantine(documentId);
      expect(lies).toHaveLength(STORE_LIMITS.quarantined);
      expect(lies.at(-1)?.at).toBe(3);
      expect(await the.store.listQuarantine(other.documentId)).toHaveLength(1);
    });
  });
}
