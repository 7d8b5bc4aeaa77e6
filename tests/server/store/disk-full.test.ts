import { spawnSync } from "node:child_process";
import { mkdirSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { sql } from "kysely";
import { afterAll, beforeEach, describe, expect, it } from "vitest";
import { connectSqlite, type SqliteConnection } from "../../../server/store/sqlite";
import { openSqliteStore } from "../../../server/store/sqlite-store";
import type { Store } from "../../../server/store/store";
import { type DrawnDocument, drawnDocument, sameDocument } from "../../support/drawn-document";
import { openPage } from "../../support/hub-client";
import { startHubProcess } from "../../support/hub-process";
import { createSheet, enter, temporaryFolder } from "../../support/hub-under-test";
import { batchOf } from "../../support/store-contract/case";

const folder = temporaryFolder();
afterAll(folder.remove);
const KIB = 1024;

describe("a database that has no more room", () => {
  let db: SqliteConnection["db"];
  let store: Store;
  let drawn: DrawnDocument;
  let files = 0;
  const pages = async () =>
    (await sql<{ page_count: number }>`pragma page_count`.execute(db)).rows[0]?.page_count ?? 0;
  const room = (most: number) => sql.raw(`pragma max_page_count = ${most}`).execute(db);
  const batch = (kib: number) => {
    const bytes = new Uint8Array(kib * KIB);
    return batchOf([{ documentId: drawn.documentId, generation: 1, at: 1, bytes }]);
  };
  const load = () => store.loadDocument(drawn.sheet, "drawing");

  beforeEach(async () => {
    const connection = connectSqlite(join(folder.path, `${++files}.db`));
    ({ db } = connection);
    store = await openSqliteStore(connection);
    drawn = await drawnDocument(store);
    await drawn.draw(50);
    return () => store.close();
  });

  it("says so, keeps all that was acknowledged, and takes the same batch once there is room", async () => {
    await room((await pages()) + 20);
    let acknowledged = 0;
    let refused = batch(8);
    const full = (async () => {
      for (;;) {
        refused = batch(8);
        await store.appendUpdates(refused);
        acknowledged++;
      }
    })();
    await expect(full).rejects.toMatchObject({ code: "full" });
    expect(acknowledged).toBeGreaterThan(2);
    for (let times = 0; times < 3; times++) {
      await expect(store.appendUpdates(refused)).rejects.toMatchObject({ code: "full" });
    }
    expect(await load()).toMatchObject({ head: 51 + acknowledged });
    await room(1e6);
    expect(await store.appendUpdates(refused)).toMatchObject({ refused: [] });
    expect(await load()).toMatchObject({ head: 52 + acknowledged });
    const check = await sql`pragma integrity_check`.execute(db);
    expect(check.rows).toEqual([{ integrity_check: "ok" }]);
  });

  it("leaves a document whole that could not be compacted", async () => {
    await drawn.draw(1000);
    await room(await pages());
    const order = {
      documentId: drawn.documentId,
      by: "one",
      at: 1,
      atLeast: { rows: 1, bytes: 1 },
    };
    await expect(store.compact(order)).rejects.toMatchObject({ code: "full" });
    expect(sameDocument((await load())?.updates ?? [], drawn.updates)).toBe(true);
    await room(1e6);
    expect(await store.compact(order)).toMatchObject({ outcome: "compacted" });
    expect(sameDocument((await load())?.updates ?? [], drawn.updates)).toBe(true);
  });
});

/** A disk of two MiB, where this machine lets us have one. */
function smallDisk(): string | null {
  const place = join(folder.path, "disk");
  mkdirSync(place, { recursive: true });
  const mounted = spawnSync("mount", ["-t", "tmpfs", "-o", "size=2m", "tmpfs", place]);
  return mounted.status === 0 ? place : null;
}

const disk = smallDisk();
describe.runIf(disk !== null)("a disk that is full", () => {
  const place = disk ?? "";
  afterAll(() => {
    spawnSync("umount", ["-l", place]);
  });

  it("is told to the page, loses nothing that was called saved, and takes all of it once there is room", async () => {
    const ballast = join(place, "ballast");
    writeFileSync(ballast, new Uint8Array(800 * KIB));
    let hub = await startHubProcess(join(place, "data"));
    const { sheet, links } = await createSheet(hub.url);
    const cookie = await enter(hub.url, sheet, links.draw);
    const page = await openPage({ url: hub.url, sheet, cookie });
    const isFull = () => page.storage.at(-1)?.state === "full";
    let drawn = 0;
    while (!isFull()) {
      page.draw(`stroke ${++drawn}`, new Uint8Array(20 * KIB));
      await page.until(() => page.saved === page.sent || isFull());
    }
    expect(drawn).toBeGreaterThan(5);
    expect(page.saved).toBe(page.sent - 1);
    rmSync(ballast);
    await page.allSaved();
    await page.until(() => page.storage.at(-1)?.state === "ok");
    expect(page.closed).toBeNull();
    expect(await hub.end("SIGKILL")).toBe("SIGKILL");
    hub = await startHubProcess(join(place, "data"));
    const after = await openPage({ url: hub.url, sheet, cookie });
    expect(after.strokes()).toHaveLength(drawn);
    await after.close();
    expect(await hub.end("SIGTERM")).toBe(0);
  });
});
