import { join } from "node:path";
import { sql } from "kysely";
import { afterEach, describe, expect, it } from "vitest";
import { openSqlite } from "../../server/store/sqlite";
import { CLOSE } from "../../shared/close-code";
import { connect, openPage } from "../support/hub-client";
import { startHubProcess } from "../support/hub-process";
import {
  createSheet,
  enter,
  sheetWithPeople,
  startTestHub,
  temporaryFolder,
} from "../support/hub-under-test";

describe("a hub that goes", () => {
  const folder = temporaryFolder();
  afterEach(folder.remove);

  it("says so, still takes what pages hand over, lets nobody in, and sends everyone away", async () => {
    const running = await startTestHub(folder.path, { graceMs: 1500 });
    const { sheet, cookies } = await sheetWithPeople(running.url);
    const at = { url: running.url, sheet };
    const [anna, ben] = [
      await openPage({ ...at, cookie: cookies.owner }),
      await openPage({ ...at, cookie: cookies.draw }),
    ];
    const drained = running.hub.drain(8000);
    await anna.until(() => anna.going.length > 0);
    const { minMs, maxMs } = anna.going[0] ?? { minMs: 0, maxMs: 0 };
    expect(minMs).toBeGreaterThan(0);
    expect(maxMs).toBeGreaterThan(minMs);
    anna.draw("at the last moment");
    await anna.allSaved();
    await ben.until(() => ben.strokes().length > 0);
    await expect(connect({ ...at, cookie: cookies.view })).rejects.toThrow("status 503");
    await anna.until(() => anna.closed !== null);
    await ben.until(() => ben.closed !== null);
    expect([anna.closed, ben.closed]).toEqual([CLOSE.going, CLOSE.going]);
    expect(await drained).toBe(0);
    await running.stop();
  });

  it("ends with 1 and says how much is unsaved when the disk stands still", async () => {
    const hub = await startHubProcess(folder.path);
    const { sheet, links } = await createSheet(hub.url);
    const cookie = await enter(hub.url, sheet, links.draw);
    const page = await openPage({ url: hub.url, sheet, cookie });
    const holder = openSqlite(join(folder.path, "heelstrip.db"));
    await sql`begin immediate`.execute(holder);
    page.draw("held");
    await page.until(() => page.storage.length > 0);
    const since = Date.now();
    expect(await hub.end("SIGTERM")).toBe(1);
    expect(Date.now() - since).toBeLessThan(12_000); // ten seconds, and a busy machine's two
    expect(hub.errors()).toMatch(/"event":"unsaved","updates":1/);
    expect(page.saved).toBeLessThan(page.sent);
    await sql`rollback`.execute(holder);
    await holder.destroy();
  });
});
