import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { sql } from "kysely";
import { afterAll, describe, expect, it } from "vitest";
import { openKyselyStore } from "../../../server/store/kysely-store";
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
  const store = await kept(open(file));
  return {
    store,
    async reopen() {
      await store.close();
      opened.splice(opened.indexOf(store), 1);
      return kept(open(file));
    },
  };
}

afterAll(async () => {
  await Promise.all(opened.map((store) => store.close()));
  folder.remove();
});

describeStore("SQLite", () => underTest((file) => openKyselyStore(openSqlite(file), SQLITE)));
describeStore("SQLite in a thread", () => underTest(openSqliteInWorker));

describe("a database from before there were pictures", () => {
  it("gets a table for them and keeps what it had", async () => {
    const file = join(folder.path, "older.db");
    const db = openSqlite(file);
    await openKyselyStore(db, SQLITE);
    await sql`drop table blobs`.execute(db);
    await sql`delete from kysely_migration where name = '0002-blobs'`.execute(db);
    await sql`insert into sheets values ('AAAAAAAAAAAA', 1, 5)`.execute(db);
    await db.destroy();
    const store = await kept(openKyselyStore(openSqlite(file), SQLITE));
    const bytes = Uint8Array.of(1, 2);
    const blob = { sheet: readSheetId("AAAAAAAAAAAA") as SheetId, blob: "one", mediaType: "a/b" };
    expect(await store.putBlob({ ...blob, bytes, at: 1, sheetBytes: 9 })).toBe("stored");
    expect(await store.loadBlob(blob.sheet, "one")).toEqual({ mediaType: "a/b", bytes });
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
