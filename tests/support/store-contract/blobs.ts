import { describe, expect, it } from "vitest";
import { newSheetId } from "../../../server/access/secret";
import type { NewBlob } from "../../../server/store/store";
import { StoreError } from "../../../server/store/store-error";
import type { SheetId } from "../../../shared/sheet-id";
import { BYTES, newSheetOf, type StoreCase } from "./case";

/** Bytes beside a sheet. */
export function describeBlobs(the: StoreCase): void {
  describe("blobs", () => {
    it("are kept beside a sheet, once, and for no other sheet", async () => {
      const { sheet } = the;
      const blob = blobOf(sheet, "one", BYTES);
      expect(await the.store.putBlob(blob)).toBe("stored");
      expect(await the.store.putBlob({ ...blob, mediaType: "image/png", at: 9 })).toBe("stored");
      const kept = { mediaType: "image/webp", bytes: BYTES }; // as it first came
      expect(await the.store.loadBlob(sheet, "one")).toEqual(kept);
      expect(await the.store.loadBlob(sheet, "two")).toBeNull();
      const other = newSheetId();
      await the.store.createSheet(newSheetOf(other));
      expect(await the.store.loadBlob(other, "one")).toBeNull();
      expect(await the.store.putBlob(blobOf(other, "one", BYTES))).toBe("stored");
      expect(await the.store.loadBlob(sheet, "one")).toEqual(kept);
    });

    it("are no more than a sheet may have, also when many come at once", async () => {
      const { sheet, store } = the;
      const many = ["a", "b", "c", "d", "e", "f"].map((name) => ({
        ...blobOf(sheet, name, new Uint8Array(100)),
        sheetBytes: 350,
      }));
      const outcomes = await Promise.all(many.map((blob) => store.putBlob(blob)));
      expect(outcomes.toSorted()).toEqual([
        ...Array(3).fill("sheet-full"),
        ...Array(3).fill("stored"),
      ]);
      const kept = await Promise.all(many.map(({ blob }) => store.loadBlob(sheet, blob)));
      expect(kept.map((blob) => (blob === null ? "sheet-full" : "stored"))).toEqual(outcomes);
      // What is there already takes no room, and what fits still comes in.
      const first = many[outcomes.indexOf("stored")];
      expect(first && (await store.putBlob(first))).toBe("stored");
      const small = { ...blobOf(sheet, "small", new Uint8Array(50)), sheetBytes: 350 };
      expect(await store.putBlob(small)).toBe("stored");
      expect(await store.putBlob({ ...small, blob: "smaller" })).toBe("sheet-full");
    });

    it("are not kept beside a sheet that there is not", async () => {
      const nowhere = newSheetId();
      await expect(the.store.putBlob(blobOf(nowhere, "one", BYTES))).rejects.toThrow(StoreError);
      expect(await the.store.loadBlob(nowhere, "one")).toBeNull();
    });
  });
}

export function blobOf(sheet: SheetId, blob: string, bytes: Uint8Array): NewBlob {
  return { sheet, blob, mediaType: "image/webp", bytes, at: 5, sheetBytes: 10_000 };
}
