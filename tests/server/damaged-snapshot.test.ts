import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { systemClock } from "../../server/clock";
import { createLog } from "../../server/log";
import { openSqlite } from "../../server/store/sqlite";
import type { Store } from "../../server/store/store";
import { openPage } from "../support/hub-client";
import { sheetWithPeople, startTestHub, temporaryFolder } from "../support/hub-under-test";

describe("a newest snapshot that is not what was written", () => {
  const folder = temporaryFolder();
  afterAll(folder.remove);

  it("costs nothing: the older one and the updates since stand in, and the log says so", async () => {
    let store: Store | null = null;
    const wrapStore = (real: Store) => {
      store = real;
      return real;
    };
    let running = await startTestHub(folder.path, { wrapStore });
    const { sheet, cookies } = await sheetWithPeople(running.url);
    const open = () => openPage({ url: running.url, sheet, cookie: cookies.draw });
    const page = await open();
    const stored = await (store as Store | null)?.loadDocument(sheet as never, "drawing");
    const documentId = stored?.documentId ?? 0;
    for (const id of ["one", "two"]) {
      page.draw(id);
      await page.allSaved();
      const atLeast = { rows: 1, bytes: 0 };
      await (store as Store | null)?.compact({ documentId, by: "test", at: Date.now(), atLeast });
    }
    page.draw("three");
    await page.allSaved();
    await running.stop();
    await spoilNewest(join(folder.path, "heelstrip.db"), documentId);

    const lines: string[] = [];
    const log = createLog({ write: (line) => lines.push(line), clock: systemClock });
    running = await startTestHub(folder.path, { log });
    const after = await open();
    expect(after.strokes()).toEqual(["one", "three", "two"]);
    const said = lines.map((line) => JSON.parse(line));
    expect(said).toContainEqual(
      expect.objectContaining({
        ...{ level: "error", event: "snapshot-damaged", documentId, count: 1 },
      }),
    );
    await running.stop();
  });
});

async function spoilNewest(file: string, documentId: number): Promise<void> {
  const db = openSqlite(file);
  const newest = await db
    .selectFrom("snapshots")
    .select(["seq", "bytes"])
    .where("document_id", "=", documentId)
    .orderBy("seq", "desc")
    .executeTakeFirstOrThrow();
  const bytes = newest.bytes.map((byte, index) => (index === 9 ? byte ^ 1 : byte));
  await db
    .updateTable("snapshots")
    .set({ bytes })
    .where("document_id", "=", documentId)
    .where("seq", "=", newest.seq)
    .execute();
  await db.destroy();
}
