import {
  copyFileSync,
  cpSync,
  existsSync,
  readdirSync,
  readFileSync,
  writeFileSync,
} from "node:fs";
import { join } from "node:path";
import { sql } from "kysely";
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from "vitest";
import { newSheetId } from "../../../server/access/secret";
import { backUp } from "../../../server/store/back-up";
import { openKyselyStore } from "../../../server/store/kysely-store";
import { lockFolder } from "../../../server/store/lock-file";
import { restore } from "../../../server/store/restore";
import { SQLITE } from "../../../server/store/schema";
import { openSqlite } from "../../../server/store/sqlite";
import type { Store } from "../../../server/store/store";
import { type DrawnDocument, drawnDocument, sameDocument } from "../../support/drawn-document";
import { temporaryFolder } from "../../support/hub-under-test";
import { letGo } from "../../support/let-go";
import { device, linkOf, newSheetOf, secretOf } from "../../support/store-contract/case";

const [MONDAY, TUESDAY, FRIDAY] = [
  Date.UTC(2030, 0, 7),
  Date.UTC(2030, 0, 8),
  Date.UTC(2030, 0, 11),
];

describe("a backup and its restore", () => {
  let folder: ReturnType<typeof temporaryFolder>;
  let drawn: DrawnDocument;
  let backup: string;
  const file = () => join(folder.path, "heelstrip.db");
  const order = (at = FRIDAY) => ({ dataDir: folder.path, from: backup, at });

  /** Opens the database, does something with it, and closes it again. */
  async function within<Result>(work: (store: Store) => Promise<Result>): Promise<Result> {
    const store = await openKyselyStore(openSqlite(file()), SQLITE);
    try {
      return await work(store);
    } finally {
      await store.close();
      await letGo();
    }
  }
  const load = () =>
    within(async (store) => {
      const loaded = await store.loadDocument(drawn.sheet, "drawing");
      if (loaded === null) throw new Error("the sheet is there");
      return loaded;
    });

  const made = temporaryFolder(); // once, and copied for each sentence
  beforeAll(async () => {
    folder = made;
    await within(async (store) => {
      drawn = await drawnDocument(store);
      await drawn.draw(20);
      await store.compact({ documentId: drawn.documentId, by: "one", at: 1, atLeast: ALL });
      await drawn.draw(10);
    });
    await backUp({ dataDir: folder.path, to: null, at: MONDAY });
    await letGo();
  });
  beforeEach(() => {
    folder = temporaryFolder();
    cpSync(made.path, folder.path, { recursive: true });
    backup = join(folder.path, "backups", "heelstrip-2030-01-07T00-00-00.db");
  });
  afterAll(() => made.remove());
  afterEach(() => folder.remove());

  it("has a name with its time, in a folder of its own, and nothing beside it", () => {
    const names = readdirSync(join(made.path, "backups"));
    expect(names).toEqual(["heelstrip-2030-01-07T00-00-00.db"]);
  });

  it("is not made over another file, nor of nothing", async () => {
    const again = backUp({ dataDir: folder.path, to: backup, at: MONDAY });
    await expect(again).rejects.toThrow("is there already, and stays as it is");
    const empty = temporaryFolder();
    const nothing = backUp({ dataDir: empty.path, to: null, at: MONDAY });
    await expect(nothing).rejects.toThrow("there is no database in");
    expect(readdirSync(empty.path)).toEqual([]);
    empty.remove();
  });

  it("is not called made where a document has a hole", async () => {
    const db = openSqlite(file());
    await sql`delete from updates where seq = 25`.execute(db);
    await db.destroy();
    const to = join(folder.path, "holed.db");
    await expect(backUp({ dataDir: folder.path, to, at: MONDAY })).rejects.toThrow(
      "needs 10 updates",
    );
    expect(existsSync(to)).toBe(false);
  });

  it("brings back what was drawn, under a generation that nobody has seen", async () => {
    await within((store) => store.raiseGeneration(drawn.sheet, null, FRIDAY + 5));
    const { found, missing, unread } = await restore(order());
    expect({ found, missing, unread }).toEqual({
      ...{ found: { sheets: 1, documents: 2, damagedSnapshots: 0 }, missing: 0, unread: null },
    });
    const loaded = await load();
    expect(loaded.generation).toBe(FRIDAY + 6);
    expect(sameDocument(loaded.updates, drawn.updates)).toBe(true);
    const [row] = await within((store) => store.listAudit(drawn.sheet, 1));
    expect(row).toMatchObject({ what: "restored", who: "server", at: FRIDAY });
  });

  it("takes nothing that a room from before it would still append", async () => {
    await restore(order());
    const update = { documentId: drawn.documentId, generation: 1, at: 1, bytes: Uint8Array.of(0) };
    const outcome = await within((store) => store.appendUpdates({ id: "late", updates: [update] }));
    expect(outcome.refused).toMatchObject([{ reason: "generation-changed" }]);
  });

  it("keeps what was there, with what had not left its log yet", async () => {
    const killed = temporaryFolder();
    const other = newSheetId();
    await within(async (store) => {
      await store.createSheet(newSheetOf(other));
      for (const name of ["heelstrip.db", "heelstrip.db-wal"])
        copyFileSync(join(folder.path, name), join(killed.path, name));
    });
    for (const name of readdirSync(killed.path))
      copyFileSync(join(killed.path, name), join(folder.path, name));
    killed.remove();
    const { aside, missing } = await restore(order());
    await letGo();
    expect(missing).toBe(1);
    expect(await within((now) => now.loadDocument(other, "drawing"))).toBeNull();
    await restore({ dataDir: folder.path, from: aside ?? "", at: FRIDAY + 1000 });
    expect(await within((now) => now.loadDocument(other, "drawing"))).not.toBeNull();
  });

  it("opens no link again that was revoked since, and shuts out nobody who came in since", async () => {
    const { sheet } = drawn;
    const late = linkOf(sheet, "draw", "late");
    const change = { sheet, at: TUESDAY, by: null };
    const enter = (store: Store, number: number, secretSha256: Uint8Array) =>
      store.enter({ sheet, secretSha256, device: device(number), at: TUESDAY });
    await within(async (store) => {
      const links = await store.listLinks(sheet);
      const idOf = (role: string) => links.find((link) => link.role === role)?.link ?? "";
      await enter(store, 1, secretOf(sheet, "view"));
      await store.revokeLink({ ...change, link: idOf("view") });
      await store.changeLink({ ...change, link: idOf("draw"), role: "critique" });
      await store.addLink({ ...late, at: TUESDAY });
      await enter(store, 2, late.secretSha256);
      await enter(store, 3, secretOf(sheet, "draw"));
    });
    await restore(order());
    await within(async (store) => {
      const grant = (number: number) => store.grantOf(device(number), sheet, FRIDAY);
      expect(await grant(1)).toBeNull();
      expect(await enter(store, 4, secretOf(sheet, "view"))).toBeNull();
      expect(await grant(2)).toMatchObject({ link: late.link, role: "draw" });
      expect(await grant(3)).toMatchObject({ role: "critique" });
      const deeds = (await store.listAudit(sheet, 10)).map(({ what }) => what);
      const since = ["restored", "link-made", "link-changed", "link-revoked", "sheet-made"];
      expect(deeds).toEqual(since);
    });
  });

  it("takes the later word on a link from whichever database has it", async () => {
    const stale = temporaryFolder();
    await restore({ dataDir: stale.path, from: backup, at: TUESDAY }); // a machine that fell behind
    await letGo();
    const { sheet } = drawn;
    await within(async (store) => {
      const link = (await store.listLinks(sheet)).find(({ role }) => role === "draw")?.link ?? "";
      await store.changeLink({ sheet, link, role: "view", at: FRIDAY, by: null });
    });
    const { file: newer } = await backUp({ dataDir: folder.path, to: null, at: FRIDAY });
    await restore({ dataDir: stale.path, from: newer, at: FRIDAY });
    const store = await openKyselyStore(openSqlite(join(stale.path, "heelstrip.db")), SQLITE);
    const secretSha256 = secretOf(sheet, "draw");
    const entry = { sheet, secretSha256, device: device(1), at: FRIDAY };
    expect(await store.enter(entry)).toMatchObject({ role: "view" });
    await store.close();
    stale.remove();
  });

  it("is refused while the folder is in use, and changes nothing then", async () => {
    const lock = lockFolder(folder.path);
    await expect(restore(order())).rejects.toThrow(`in use by process ${process.pid}`);
    lock.release();
    expect((await load()).generation).toBe(1);
  });

  const spoilt: readonly [string, RegExp, (bytes: Buffer) => Buffer][] = [
    [
      "no database",
      /cannot be restored|not a database/,
      () => Buffer.from("Dear reader. ".repeat(99)),
    ],
    ["an empty file", /no database of this program/, () => Buffer.alloc(0)],
    ["cut off", /cannot be restored|malformed/, (bytes) => bytes.subarray(0, bytes.length / 2)],
    ["damaged", /cannot be restored|malformed/, (bytes) => bytes.fill(7, 4096, 4096 * 12)],
  ];
  it.each(spoilt)(
    "is refused where the file is %s, and changes nothing then",
    async (_, why, spoil) => {
      writeFileSync(backup, spoil(readFileSync(backup)));
      await expect(restore(order())).rejects.toThrow(why);
      expect(await load()).toMatchObject({ generation: 1, head: 31 });
      expect(readdirSync(folder.path).sort()).toEqual(["backups", "heelstrip.db"]);
    },
  );

  it("is refused where the file is of a newer version", async () => {
    const db = openSqlite(backup);
    await sql`insert into kysely_migration values ('9999-wings', '2040')`.execute(db);
    await db.destroy();
    await expect(restore(order())).rejects.toThrow("made by a newer version");
    expect((await load()).generation).toBe(1);
  });

  it("is put in the place of a database that cannot be read, and says so", async () => {
    writeFileSync(file(), "torn".repeat(2000));
    const { unread, aside } = await restore(order());
    expect(unread).toMatch(/not a database/);
    expect(readFileSync(aside ?? "", "utf8")).toContain("torntorn");
    expect(sameDocument((await load()).updates, drawn.updates)).toBe(true);
  });

  it.each(["copied", "ready", "aside"] as const)(
    "leaves the old database where it was struck down when %s, and can be done again",
    async (point) => {
      const reached = (at: string) => {
        if (at === point) throw new Error("struck down");
      };
      await expect(restore({ ...order(), reached })).rejects.toThrow("struck down");
      await letGo();
      expect(await load()).toMatchObject({ generation: 1, head: 31 });
      await restore(order(FRIDAY + 1000));
      expect((await load()).generation).toBe(FRIDAY + 1000);
    },
  );
});

const ALL = { rows: 1, bytes: 1 };
