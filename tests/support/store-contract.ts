import { beforeAll, beforeEach, describe, expect, it } from "vitest";
import { newSheetId } from "../../server/access/secret";
import type { Store } from "../../server/store/store";
import type { SheetId } from "../../shared/sheet-id";
import { describeAccess } from "./store-contract/access";
import { blobOf, describeBlobs } from "./store-contract/blobs";
import {
  BYTES,
  batchOf,
  device,
  newSheetOf,
  type StoreCase,
  type StoreUnderTest,
  secretOf,
} from "./store-contract/case";
import { describeCompaction } from "./store-contract/compaction";
import { describeDocuments } from "./store-contract/documents";

/** What any store must do, whatever database is under it. */
export function describeStore(name: string, open: () => Promise<StoreUnderTest>): void {
  describe(`a store over ${name}`, () => {
    let under: StoreUnderTest;
    let store: Store;
    let sheet: SheetId;

    beforeAll(async () => {
      under = await open();
      ({ store } = under);
    });
    beforeEach(async () => {
      sheet = newSheetId();
      await store.createSheet(newSheetOf(sheet));
    });

    const the: StoreCase = {
      get store() {
        return store;
      },
      get sheet() {
        return sheet;
      },
      async reopen() {
        store = await under.reopen();
      },
      documentId: async (document = "drawing") =>
        (await store.loadDocument(sheet, document))?.documentId ?? 0,
      async append(bytes, more = {}) {
        const documentId = await the.documentId();
        const updates = bytes.map((each) => ({
          ...{ documentId, generation: 1, at: 1, bytes: each },
          ...more,
        }));
        return store.appendUpdates(batchOf(updates));
      },
    };

    describeDocuments(the);
    describeCompaction(the);
    describeAccess(the);
    describeBlobs(the);

    it("holds everything after it was closed and opened again", async () => {
      const claim = { client: 7, device: device(1) };
      await the.append([BYTES], { claims: [claim] });
      const secretSha256 = secretOf(sheet, "draw");
      const grant = await store.enter({ sheet, secretSha256, device: device(1), at: 5 });
      await store.putBlob(blobOf(sheet, "one", BYTES));
      await store.raiseGeneration(sheet, null, 9);
      const [audit, control] = [await store.listAudit(sheet, 9), await store.controlAfter(0)];
      await the.reopen();
      const updates = [Uint8Array.of(1), BYTES];
      const drawing = { generation: 9, updates, owners: [claim] };
      expect(await store.loadDocument(sheet, "drawing")).toMatchObject(drawing);
      expect(await store.grantOf(device(1), sheet, 6)).toEqual(grant);
      expect((await store.loadBlob(sheet, "one"))?.bytes).toEqual(BYTES);
      expect(await store.listAudit(sheet, 9)).toEqual(audit);
      expect(await store.controlAfter(0)).toEqual(control);
    });

    it("finds out whether it can write", async () => {
      await expect(store.probe(5)).resolves.toBeUndefined();
    });
  });
}
