import { join } from "node:path";
import { sql } from "kysely";
import { afterAll, describe, expect, it } from "vitest";
import { openSqlite } from "../../server/store/sqlite";
import { openPage } from "../support/hub-client";
import { startHubProcess } from "../support/hub-process";
import { ask, createSheet, enter, temporaryFolder } from "../support/hub-under-test";

const TOLD_MS = 1000;
const RECOVERED_MS = 2000;

describe("a database that another process holds for ten seconds", () => {
  const folder = temporaryFolder();
  afterAll(folder.remove);

  it("is told within a second, ends nothing, loses nothing, and is made up for", async () => {
    let hub = await startHubProcess(folder.path);
    const { sheet, links } = await createSheet(hub.url);
    const cookie = await enter(hub.url, sheet, links.draw);
    const open = () => openPage({ url: hub.url, sheet, cookie });
    const [page, peer] = [await open(), await open()];
    page.draw("before");
    await page.allSaved();

    const holder = openSqlite(join(folder.path, "heelstrip.db"));
    await sql`begin immediate`.execute(holder);
    const held = performance.now();
    page.draw("during");
    await page.until(() => page.storage.length > 0);
    expect(performance.now() - held).toBeLessThan(TOLD_MS);
    const states = () => page.storage.map(({ state }) => state);
    expect(states()[0]).toBe("slow");
    // Longer than the database itself waits for a lock, so that commits fail and are tried again.
    await page.until(() => performance.now() - held > 10_000 && states().includes("failing"));
    expect(page.saved).toBe(page.sent - 1);
    expect(peer.strokes()).toEqual(["before"]);
    expect((await ask(hub.url, "/api/nothing")).status).toBe(404); // it answers
    // Somebody at the door is told to come back, and not that the link is none.
    const body = { sheet, secret: links.view };
    const knock = await ask(hub.url, "/api/enter", { method: "POST", body });
    expect(knock).toMatchObject({ status: 503, body: { code: "storage" } });

    await sql`rollback`.execute(holder);
    await holder.destroy();
    const freed = performance.now();
    await page.allSaved();
    expect(performance.now() - freed).toBeLessThan(RECOVERED_MS + TOLD_MS);
    await page.until(() => states().at(-1) === "ok");
    await peer.until(() => peer.strokes().length === 2);
    expect([page.closed, peer.closed]).toEqual([null, null]);
    expect(await hub.end("SIGKILL")).toBe("SIGKILL");
    hub = await startHubProcess(folder.path);
    const after = await open();
    expect(after.strokes()).toEqual(["before", "during"]);
    await after.close();
    expect(await hub.end("SIGTERM")).toBe(0);
  });
});
