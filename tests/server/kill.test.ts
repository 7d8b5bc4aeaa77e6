import { join } from "node:path";
import { sql } from "kysely";
import { afterAll, describe, expect, it } from "vitest";
import { openSqlite } from "../../server/store/sqlite";
import { dice } from "../support/dice";
import { drawing } from "../support/drawing-hand";
import { openPage } from "../support/hub-client";
import { startHubProcess } from "../support/hub-process";
import { createSheet, enter, temporaryFolder } from "../support/hub-under-test";

const KILLS = Number(process.env.KILLS ?? 5);
const seed = Number(process.env.SEED ?? Date.now() % 1e6);

describe("SIGKILL while two people draw", () => {
  const folder = temporaryFolder();
  afterAll(folder.remove);

  it(`leaves no acknowledged stroke missing, nor one that a peer saw (SEED=${seed})`, async () => {
    const roll = dice(seed);
    const promised = new Set<string>();
    let hub = await startHubProcess(folder.path);
    const { sheet, links } = await createSheet(hub.url);
    const cookie = await enter(hub.url, sheet, links.draw);

    for (let kill = 1; kill <= KILLS; kill++) {
      const pages = [
        await openPage({ url: hub.url, sheet, cookie }),
        await openPage({ url: hub.url, sheet, cookie }),
      ];
      const hands = pages.map((page, index) => drawing(page, `kill ${kill} hand ${index}`));
      // Somewhere in the middle of it, told by strokes and not by the clock.
      const enough = 20 + roll.below(200);
      await pages[0]?.until(() => (hands[0]?.acknowledged().length ?? 0) >= enough);
      expect(await hub.end("SIGKILL")).toBe("SIGKILL");
      await Promise.all(pages.map((page) => page.until(() => page.closed !== null)));
      for (const hand of hands) {
        for (const id of [...hand.acknowledged(), ...hand.seen]) promised.add(id);
        expect(hand.seen.size).toBeGreaterThan(0);
      }
      hub = await startHubProcess(folder.path);
      const after = await openPage({ url: hub.url, sheet, cookie });
      const there = new Set(after.strokes());
      expect([...promised].filter((id) => !there.has(id))).toEqual([]);
      await after.close();
    }
    expect(promised.size).toBeGreaterThan(KILLS * 40);
    expect(await hub.end("SIGTERM")).toBe(0);
  }, 180_000);
});

describe("SIGKILL while the database is locked", () => {
  const folder = temporaryFolder();
  afterAll(folder.remove);

  it("finds nothing called saved, and nothing shown, that was drawn meanwhile", async () => {
    let hub = await startHubProcess(folder.path);
    const { sheet, links } = await createSheet(hub.url);
    const cookie = await enter(hub.url, sheet, links.draw);
    const page = { url: hub.url, sheet, cookie };
    const [drawer, watcher] = [await openPage(page), await openPage(page)];
    const hands = [drawing(drawer, "drawer"), drawing(watcher, "watcher")];
    await drawer.until(() => (hands[0]?.acknowledged().length ?? 0) >= 20);
    const holder = openSqlite(join(folder.path, "heelstrip.db"));
    await sql`begin immediate`.execute(holder);
    await drawer.until(() => drawer.storage.some(({ state }) => state === "slow"));
    await hub.end("SIGKILL");
    await drawer.until(() => drawer.closed !== null);
    await watcher.until(() => watcher.closed !== null);
    await sql`rollback`.execute(holder);
    await holder.destroy();
    hub = await startHubProcess(folder.path);
    const after = await openPage({ ...page, url: hub.url });
    const there = new Set(after.strokes());
    const promised = hands.flatMap((hand) => [...hand.acknowledged(), ...hand.seen]);
    expect(promised.length).toBeGreaterThanOrEqual(20);
    expect(promised.filter((id) => !there.has(id))).toEqual([]);
    await after.close();
    await hub.end("SIGTERM");
  });
});

describe("a data folder", () => {
  const folder = temporaryFolder();
  afterAll(folder.remove);

  it("keeps a second process out of the folder, but not after the first is gone", async () => {
    const first = await startHubProcess(folder.path);
    await expect(startHubProcess(folder.path)).rejects.toThrow(/in use by process \d+/);
    await first.end("SIGKILL");
    const second = await startHubProcess(folder.path);
    expect(await second.end("SIGTERM")).toBe(0);
  });
});
