import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { sql } from "kysely";
import { afterAll, describe, expect, it } from "vitest";
import { sha256 } from "../../../server/access/secret";
import { openKyselyStore } from "../../../server/store/kysely-store";
import { migrate } from "../../../server/store/migrations";
import { SQLITE } from "../../../server/store/schema";
import { openSqlite } from "../../../server/store/sqlite";
import { openSqliteInWorker } from "../../../server/store/sqlite-in-worker";
import type { Store } from "../../../server/store/store";
import { StoreError } from "../../../server/store/store-error";
import { readSheetId, type SheetId } from "../../../shared/sheet-id";
import { temporaryFolder } from "../../support/hub-under-test";
import { describeStore } from "../../support/store-contract";

const folder = temporaryFolder();
const opened: Store[] = [];
let files = 0;

async function kept(store: Promise<Store>): Promise<Store> {
  opened.push(await store);
  return store;
}

async function underTest(open: (file: string) => Promise<Store>) {
  const file = join(folder.path, `${++files}.db`);
  let store = await kept(open(file));
  return {
    store,
    async reopen() {
      await store.close();
      opened.splice(opened.indexOf(store), 1);
      store = await kept(open(file));
      return store;
    },
  };
}

afterAll(async () => {
  await Promise.all(opened.map((store) => store.close()));
  folder.remove();
});

describeStore("SQLite", () => underTest((file) => openKyselyStore(openSqlite(file), SQLITE)));
describeStore("SQLite in a thread", () => underTest(openSqliteInWorker));

describe("a database of an older version", () => {
  it("gets the tables it lacks and keeps what it had", async () => {
    const file = join(folder.path, "older.db");
    const db = openSqlite(file);
    await migrate(db, SQLITE, "0001-first-tables");
    await sql`insert into sheets values ('AAAAAAAAAAAA', 3, 5)`.execute(db);
    await sql`insert into documents values (1, 'AAAAAAAAAAAA', 'drawing', 2, 3)`.execute(db);
    await sql`insert into updates values (1, 1, 5, x'01'), (1, 2, 6, x'0203')`.execute(db);
    await sql`insert into links values
      ('link', 'AAAAAAAAAAAA', 'draw', ${sha256("secret")}, 'mine', 5, null)`.execute(db);
    await db.destroy();
    const store = await kept(openKyselyStore(openSqlite(file), SQLITE));
    const sheet = readSheetId("AAAAAAAAAAAA") as SheetId;
    expect(await store.loadDocument(sheet, "drawing")).toEqual({
      ...{ documentId: 1, generation: 3, head: 2, size: 3, owners: [], damagedSnapshots: 0 },
      updates: [Uint8Array.of(1), Uint8Array.of(2, 3)],
    });
    const update = { documentId: 1, generation: 3, at: 7, bytes: Uint8Array.of(4) };
    const { stored } = await store.appendUpdates({ id: "batch", updates: [update] });
    expect(stored).toEqual([{ documentId: 1, head: 3, size: 4, tailRows: 3, tailBytes: 4 }]);
    const entry = { sheet, secretSha256: sha256("secret"), device: sha256("device"), at: 8 };
    expect(await store.enter(entry)).toEqual({ link: "link", role: "draw", expiresAt: null });
    const bytes = Uint8Array.of(1, 2);
    const blob = { sheet, blob: "one", mediaType: "a/b" };
    expect(await store.putBlob({ ...blob, bytes, at: 1, sheetBytes: 9 })).toBe("stored");
    expect(await store.loadBlob(sheet, "one")).toEqual({ mediaType: "a/b", bytes });
  });
});

describe("the SQLite wrapper", () => {
  it("passes on what SQLite can hold, and refuses what would end the process", async () => {
    const db = openSqlite(join(folder.path, "values.db"));
    const back = async (value: unknown) =>
      (await sql<{ it: unknown }>`select ${value} as it`.execute(db)).rows[0]?.it;
    expect(await back(true)).toBe(1);
    expect(await back(Uint8Array.of(0, 1, 255))).toEqual(Uint8Array.of(0, 1, 255));
    expect(await back(null)).toBeNull();
    for (const value of [undefined, { a: 1 }, Symbol("s")]) {
      await expect(back(value)).rejects.toThrow("SQLite needs a number, text or bytes");
    }
    await db.destroy();
  });

  it("syncs every commit to the disk", async () => {
    const db = openSqlite(join(folder.path, "syncs.db"));
    const mode = await sql<{ journal_mode: string }>`pragma journal_mode`.execute(db);
    const level = await sql<{ synchronous: number }>`pragma synchronous`.execute(db);
    expect(mode.rows[0]?.journal_mode).toBe("wal");
    expect(level.rows[0]?.synchronous).toBe(2); // FULL
    await db.destroy();
  });

  it("says so when the file is no database", async () => {
    const file = join(folder.path, "letter.db");
    writeFileSync(file, "Dear reader, this is a letter and no database at all.".repeat(40));
    await expect(openSqliteInWorker(file)).rejects.toThrow(StoreError);
  });
});
