import { spawnSync } from "node:child_process";
import { join } from "node:path";
import { sql } from "kysely";
import { afterAll, afterEach, beforeEach, describe, expect, it } from "vitest";
import { type CompactPoint, compact } from "../../../server/store/compact";
import { openKyselyStore } from "../../../server/store/kysely-store";
import { SQLITE } from "../../../server/store/schema";
import { openSqlite } from "../../../server/store/sqlite";
import type { Store } from "../../../server/store/store";
import { STORE_LIMITS } from "../../../shared/limits";
import { type DrawnDocument, drawnDocument, sameDocument } from "../../support/drawn-document";
import { temporaryFolder } from "../../support/hub-under-test";
import { toRun } from "../../support/programs";

const folder = temporaryFolder();
afterAll(folder.remove);
let files = 0;

describe("a compacted document in SQLite", () => {
  let file: string;
  let db: ReturnType<typeof openSqlite>;
  let store: Store;
  let drawn: DrawnDocument;

  beforeEach(async () => {
    file = join(folder.path, `${++files}.db`);
    db = openSqlite(file);
    store = await openKyselyStore(db, SQLITE);
    drawn = await drawnDocument(store);
  });
  afterEach(() => store.close());

  const order = (by = "one", at = 5) => ({
    ...{ documentId: drawn.documentId, by, at },
    atLeast: { rows: 1, bytes: 1 },
  });
  const count = async (table: "updates" | "snapshots") => {
    const { rows } = await sql<{ n: number }>`select count(*) as n from ${sql.table(table)}
      where document_id = ${drawn.documentId}`.execute(db);
    return rows[0]?.n;
  };
  const spoil = (which: "newest" | "oldest") =>
    sql`update snapshots set bytes = x'0000'
    where document_id = ${drawn.documentId} and seq =
      (select ${sql.raw(which === "newest" ? "max" : "min")}(seq) from snapshots
        where document_id = ${drawn.documentId})`.execute(db);
  const isWhole = async () => {
    const loaded = await store.loadDocument(drawn.sheet, "drawing");
    return loaded !== null && sameDocument(loaded.updates, drawn.updates);
  };

  it("keeps two snapshots, and every update after the older", async () => {
    await drawn.draw(99);
    await store.compact(order());
    expect([await count("snapshots"), await count("updates")]).toEqual([1, 100]);
    await drawn.draw(50);
    await store.compact(order());
    expect([await count("snapshots"), await count("updates")]).toEqual([2, 50]);
    await drawn.draw(30);
    await store.compact(order());
    expect([await count("snapshots"), await count("updates")]).toEqual([2, 30]);
    expect(await isWhole()).toBe(true);
  });

  it("is loaded from the older snapshot where the newest is damaged, and mended by the next", async () => {
    await drawn.draw(50);
    await store.compact(order());
    await spoil("newest");
    expect(await store.loadDocument(drawn.sheet, "drawing")).toMatchObject({ damagedSnapshots: 1 });
    expect(await isWhole()).toBe(true);
    await drawn.draw(50);
    await store.compact(order());
    await drawn.draw(50);
    await store.compact(order());
    await spoil("newest");
    await drawn.draw(7);
    expect(await store.loadDocument(drawn.sheet, "drawing")).toMatchObject({
      ...{ damagedSnapshots: 1, head: 158 },
      updates: { length: 1 + 57 },
    });
    expect(await isWhole()).toBe(true);
    expect(await store.compact(order())).toMatchObject({ outcome: "compacted", rows: 57 });
    expect(await store.loadDocument(drawn.sheet, "drawing")).toMatchObject({ damagedSnapshots: 0 });
    expect(await isWhole()).toBe(true);
  });

  it("is not served where both are damaged, for then there is a hole in it", async () => {
    for (let twice = 0; twice < 2; twice++) {
      await drawn.draw(50);
      await store.compact(order());
    }
    await drawn.draw(1);
    await spoil("newest");
    await spoil("oldest");
    const load = store.loadDocument(drawn.sheet, "drawing");
    await expect(load).rejects.toMatchObject({ code: "damaged" });
    await expect(store.compact(order())).rejects.toMatchObject({ code: "damaged" });
  });

  it("is left to the instance that has it, until that has not been heard of for long", async () => {
    await drawn.draw(50);
    const meanwhile: unknown[] = [];
    const points: CompactPoint[] = [];
    await compact(db, SQLITE, order("one", 1000), (point) => {
      points.push(point);
      if (point === "leased") meanwhile.push(store.compact(order("two", 1001)));
    });
    expect(points).toEqual(["leased", "read", "written", "released"]);
    expect(await Promise.all(meanwhile)).toEqual([{ outcome: "leased" }]);
    await drawn.draw(50);
    const until = 1000 + STORE_LIMITS.leaseMs;
    await sql`update documents set lease_by = 'dead', lease_until = ${until}`.execute(db);
    expect(await store.compact(order("two", until))).toEqual({ outcome: "leased" });
    expect(await store.compact(order("two", until + 1))).toMatchObject({ outcome: "compacted" });
  });

  it("keeps the updates of a document that was put back meanwhile", async () => {
    await drawn.draw(50);
    let raised: Promise<unknown> = Promise.resolve();
    const outcome = compact(db, SQLITE, order(), (point) => {
      if (point === "read") raised = store.raiseGeneration(drawn.sheet, null, 9);
    });
    expect([await outcome, await raised]).toEqual([{ outcome: "leased" }, 9]);
    expect([await count("snapshots"), await count("updates")]).toEqual([0, 51]);
  });

  const kills: readonly [CompactPoint, number][] = [
    ["leased", 1],
    ["read", 1],
    ["written", 1],
    ["deleted", 1],
    ["deleted", 2],
    ["released", 1],
  ];
  it.each(kills)("is whole after SIGKILL when %s, the %dth time", async (point, nth) => {
    const tail = STORE_LIMITS.deleteStep + 100; // so that deleting takes two steps
    await drawn.draw(tail);
    await store.compact(order());
    await drawn.draw(60);
    await store.close();
    const args = toRun("tests/support/compact-and-die.ts");
    const said = [file, `${drawn.documentId}`, point, `${nth}`];
    const died = spawnSync(process.execPath, [...args, ...said], { encoding: "utf8" });
    expect(died).toMatchObject({ signal: "SIGKILL", stderr: "" });
    db = openSqlite(file);
    store = await openKyselyStore(db, SQLITE);
    expect(await isWhole()).toBe(true);
    // The lease of the dead lapses, and what was left undone is done.
    const later = Date.now() + 2 * STORE_LIMITS.leaseMs;
    const update = { documentId: drawn.documentId, generation: 1, at: 1 };
    const [bytes = new Uint8Array()] = drawn.updates.slice(-1);
    await store.appendUpdates({ id: "after", updates: [{ ...update, bytes }] });
    expect(await store.compact(order("next", later))).toMatchObject({ outcome: "compacted" });
    expect(await isWhole()).toBe(true);
    expect(await count("snapshots")).toBe(2);
    expect(await count("updates")).toBeLessThanOrEqual(61);
    expect(await sql`pragma integrity_check`.execute(db)).toMatchObject({
      rows: [{ integrity_check: "ok" }],
    });
  });
});
