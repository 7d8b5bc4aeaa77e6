import { statSync } from "node:fs";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { connectSqlite } from "../../../server/store/sqlite";
import { openSqliteStore } from "../../../server/store/sqlite-store";
import { widenLog } from "../../../server/store/widen-log";
import { drawnDocument, sameDocument } from "../../support/drawn-document";
import { temporaryFolder } from "../../support/hub-under-test";
import { batchOf } from "../../support/store-contract/case";

const folder = temporaryFolder();
afterAll(folder.remove);
let files = 0;

async function opened() {
  const file = join(folder.path, `${++files}.db`);
  const connection = connectSqlite(file);
  return { file, connection, store: await openSqliteStore(connection) };
}

describe("an append that runs through at once", () => {
  it("lets a transaction that stands open on the same connection end first", async () => {
    const { connection, store } = await opened();
    const { documentId } = await drawnDocument(store);
    const update = { documentId, generation: 1, at: 1, bytes: new Uint8Array([0, 0]) };
    let isAppended = false;
    const append = { done: Promise.resolve() };
    await connection.db.transaction().execute(async (tx) => {
      append.done = store.appendUpdates(batchOf([update])).then(() => {
        isAppended = true;
      });
      await new Promise(setImmediate);
      await tx.selectFrom("documents").selectAll().execute();
      expect(isAppended).toBe(false);
    });
    await append.done;
    expect(isAppended).toBe(true);
    await store.close();
  });

  it("goes the general way where one document of a batch has gone on to another generation", async () => {
    const { connection, store } = await opened();
    const [one, other] = [await drawnDocument(store), await drawnDocument(store)];
    await store.raiseGeneration(other.sheet, null, 1);
    const bytes = new Uint8Array([0, 0]);
    const updates = [one, other].map(({ documentId }) => ({
      ...{ documentId, generation: 1, at: 1, bytes },
    }));
    const { stored, refused } = await store.appendUpdates(batchOf(updates));
    expect(stored.map(({ documentId }) => documentId)).toEqual([one.documentId]);
    expect(refused).toEqual([
      { documentId: other.documentId, generation: 1, reason: "generation-changed" },
    ]);
    const rows = connection.prepare("select seq from updates where document_id = ?");
    expect(rows.all([one.documentId]).length).toBe(stored[0]?.head);
    await store.close();
  });
});

describe("a log that was made long at once", () => {
  it("stays as long as it is while people draw, and holds what they drew", async () => {
    const { file, connection, store } = await opened();
    widenLog(file, connection);
    const long = statSync(`${file}-wal`).size;
    const drawn = await drawnDocument(store);
    for (let times = 0; times < 60; times++) await drawn.draw(5);
    expect(statSync(`${file}-wal`).size).toBe(long);
    const loaded = await store.loadDocument(drawn.sheet, "drawing");
    expect(sameDocument(loaded?.updates ?? [], drawn.updates)).toBe(true);
    await store.close();
  });

  it("is left as it is when it is long already, and what a killed process left behind goes", async () => {
    const { file, connection, store } = await opened();
    widenLog(file, connection);
    const before = statSync(file).size;
    connection.prepare("create table log_filler (bytes blob)").run([]);
    widenLog(file, connection);
    expect(statSync(file).size).toBe(before);
    const tables = connection.prepare("select name from sqlite_master where name = 'log_filler'");
    expect(tables.all([])).toEqual([]);
    await store.close();
  });
});
