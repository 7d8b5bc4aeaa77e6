import { join } from "node:path";
import { sql } from "kysely";
import * as encoding from "lib0/encoding";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import * as Y from "yjs";
import type { RunningHub } from "../../server/start-hub";
import { openSqlite } from "../../server/store/sqlite";
import type { Store } from "../../server/store/store";
import { StoreError, type StoreErrorCode } from "../../server/store/store-error";
import { CLOSE } from "../../shared/close-code";
import { HUB_LIMITS } from "../../shared/limits";
import { encodeSync, SYNC } from "../../shared/protocol";
import { connect, openPage } from "../support/hub-client";
import { sheetWithPeople, startTestHub, temporaryFolder } from "../support/hub-under-test";

/** A database that fails in one way or another, for all documents or for one. */
function ailingStore() {
  let ails: { code: StoreErrorCode; documentId: number | null } | null = null;
  let real: Store | null = null;
  return {
    fail: (code: StoreErrorCode, documentId: number | null = null) => {
      ails = { code, documentId };
    },
    heal: () => {
      ails = null;
    },
    real: () => real as Store,
    wrap: (store: Store): Store => {
      real = store;
      return {
        ...store,
        async appendUpdates(batch) {
          const hit = (documentId: number) =>
            ails !== null && (ails.documentId ?? documentId) === documentId;
          if (ails !== null && batch.updates.some(({ documentId }) => hit(documentId))) {
            throw new StoreError(ails.code, "the disk is not what it was");
          }
          return store.appendUpdates(batch);
        },
      };
    },
  };
}

describe("trouble with the disk", () => {
  const folder = temporaryFolder();
  const disk = ailingStore();
  let running: RunningHub;
  let people: Awaited<ReturnType<typeof sheetWithPeople>>;
  const open = (who: "owner" | "draw", sheet = people.sheet, cookie = people.cookies[who]) =>
    openPage({ url: running.url, sheet, cookie });

  beforeEach(async () => {
    disk.heal();
    running = await startTestHub(folder.path, { wrapStore: disk.wrap });
    people = await sheetWithPeople(running.url);
  });
  afterEach(async () => {
    disk.heal();
    await running.stop();
    folder.remove();
  });

  it("is told when it is full; nothing more is taken, live ink travels, and all is saved in the end", async () => {
    const [anna, ben] = [await open("owner"), await open("draw")];
    disk.fail("full");
    anna.draw("one");
    await anna.until(() => anna.storage.at(-1)?.state === "full");
    await ben.until(() => ben.storage.at(-1)?.state === "full");
    const waiting = running.hub.figures().waiting;
    ben.sendLive(7); // before his stroke: what comes after it waits behind it
    await anna.until(() => anna.live.length > 0);
    for (const id of ["two", "three"]) ben.draw(id);
    anna.sendLive(8);
    await ben.until(() => ben.live.length > 0);
    await anna.roundTrip();
    expect(running.hub.figures().waiting).toBe(waiting);
    expect(ben.saved).toBeLessThan(ben.sent);
    disk.heal();
    await Promise.all([anna.allSaved(), ben.allSaved()]);
    await anna.until(() => anna.storage.at(-1)?.state === "ok");
    expect([...anna.refused, ...ben.refused]).toEqual([]);
    const later = await open("owner");
    expect(later.strokes()).toEqual(["one", "three", "two"]);
    await Promise.all([anna.close(), ben.close(), later.close()]);
  });

  it("is told within a second when another process holds the file, and is over when that lets go", async () => {
    const anna = await open("owner");
    const holder = openSqlite(join(folder.path, "heelstrip.db"));
    await sql`begin immediate`.execute(holder);
    const since = Date.now();
    anna.draw("held");
    await anna.until(() => anna.storage.length > 0);
    expect(Date.now() - since).toBeLessThan(1000);
    expect(anna.storage[0]?.state).toBe("slow");
    expect(anna.saved).toBeLessThan(anna.sent);
    await sql`rollback`.execute(holder);
    await holder.destroy();
    await anna.allSaved();
    await anna.until(() => anna.storage.at(-1)?.state === "ok");
    await anna.close();
  });

  it("stays with the one document that cannot be stored", async () => {
    const other = await sheetWithPeople(running.url);
    const [anna, bystander] = [
      await open("owner"),
      await openPage({ ...running, sheet: other.sheet, cookie: other.cookies.draw }),
    ];
    const stored = await disk.real().loadDocument(people.sheet as never, "drawing");
    disk.fail("broken", stored?.documentId ?? 0);
    anna.draw("cannot be stored");
    bystander.draw("can be stored");
    await bystander.allSaved();
    await anna.until(() => anna.storage.at(-1)?.state === "failing");
    bystander.draw("still can");
    await bystander.allSaved();
    expect(anna.saved).toBeLessThan(anna.sent);
    disk.heal();
    await anna.allSaved();
    await anna.until(() => anna.storage.at(-1)?.state === "ok");
    await Promise.all([anna.close(), bystander.close()]);
  });
});

describe("an update that leaves a document unsound", () => {
  const folder = temporaryFolder();
  const disk = ailingStore();
  let running: RunningHub;
  afterEach(async () => {
    await running.stop();
    folder.remove();
  });

  it("is put aside, costs nobody anything, and after the third shuts its device out", async () => {
    running = await startTestHub(folder.path, { wrapStore: disk.wrap });
    const { sheet, cookies } = await sheetWithPeople(running.url);
    const at = { url: running.url, sheet };
    let ben = await openPage({ ...at, cookie: cookies.owner });
    ben.draw("sound");
    await ben.allSaved();
    for (let strike = 1; strike <= HUB_LIMITS.strikes; strike++) {
      const eve = await openPage({ ...at, cookie: cookies.draw });
      eve.send(encodeSync(SYNC.update, circular(strike)));
      await eve.until(() => eve.closed !== null);
      await ben.until(() => ben.closed !== null);
      expect(ben.closed).toBe(CLOSE.going); // come back: the document is loaded anew
      ben = await openPage({ ...at, cookie: cookies.owner, doc: ben.doc });
      expect(ben.strokes()).toEqual(["sound"]);
      expect(ben.refused).toEqual([]);
    }
    const out = await connect({ ...at, cookie: cookies.draw });
    await out.until(() => out.closed !== null);
    expect(out.closed).toBe(CLOSE.shutOut);
    const stored = await disk.real().loadDocument(sheet as never, "drawing");
    const aside = await disk.real().listQuarantine(stored?.documentId ?? 0);
    expect(aside).toHaveLength(HUB_LIMITS.strikes);
    ben.draw("goes on");
    await ben.allSaved();
    await ben.close();
  });
});

/** Two clients whose entries each stand on the other's: whole to read, impossible to apply. */
function circular(turn: number): Uint8Array {
  const [first, second] = [turn * 10 + 1, turn * 10 + 2];
  const [a, b] = [new Y.Doc(), new Y.Doc()];
  a.clientID = first;
  b.clientID = second;
  a.getMap("strokes").set("one", "a");
  Y.applyUpdate(b, Y.encodeStateAsUpdate(a));
  b.getMap("strokes").set("one", "b");
  const { structs } = Y.decodeUpdate(Y.encodeStateAsUpdate(b));
  const begun = structs.find(({ id }) => id.client === first);
  if (!(begun instanceof Y.Item)) throw new Error("an entry was made");
  begun.origin = Y.createID(second, 0);
  const writer = new Y.UpdateEncoderV1();
  const { restEncoder } = writer;
  encoding.writeVarUint(restEncoder, 2);
  for (const client of [second, first]) {
    encoding.writeVarUint(restEncoder, 1);
    writer.writeClient(client);
    encoding.writeVarUint(restEncoder, 0);
    structs.find(({ id }) => id.client === client)?.write(writer, 0);
  }
  encoding.writeVarUint(restEncoder, 0); // nothing deleted
  return writer.toUint8Array();
}
