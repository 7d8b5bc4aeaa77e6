import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { type HubClient, openPage } from "../support/hub-client";
import { type HubProcess, startHubProcess } from "../support/hub-process";
import { ask, createSheet, enter, temporaryFolder } from "../support/hub-under-test";
import { runCommand } from "../support/run-command";

/** Draws without a pause, until it is told to stop, and knows which strokes were called saved. */
function drawing(page: HubClient) {
  const frames = new Map<string, number>();
  let stopped = false;
  const next = () => {
    if (stopped) return;
    setImmediate(next);
    if (page.sent - page.saved >= 10) return;
    const id = `stroke ${frames.size}`;
    page.draw(id, new Uint8Array(500));
    frames.set(id, page.sent);
  };
  next();
  return {
    saved: () => [...frames].filter(([, frame]) => frame <= page.saved).map(([id]) => id),
    async stop() {
      stopped = true;
      await page.allSaved();
    },
  };
}

describe("backing up and restoring", () => {
  const folder = temporaryFolder();
  const outside = temporaryFolder();
  const env = { DATA_DIR: folder.path };
  afterAll(() => {
    folder.remove();
    outside.remove();
  });

  it("keeps what was saved while people draw, puts it back, and can be undone", async () => {
    let hub: HubProcess = await startHubProcess(folder.path);
    const { sheet, links } = await createSheet(hub.url);
    const cookie = await enter(hub.url, sheet, links.owner);
    const open = () => openPage({ url: hub.url, sheet, cookie });
    const page = await open();
    const hand = drawing(page);
    await page.until(() => hand.saved().length >= 50);

    const before = hand.saved();
    const file = join(outside.path, "monday.db");
    const backedUp = await runCommand("server/backup.ts", [file], env);
    expect(backedUp).toMatchObject({ code: 0, complained: "" });
    expect(backedUp.said).toMatch(
      /^Backed up to .*monday\.db: .* MiB, 1 sheets, all of them sound/,
    );
    const again = await runCommand("server/backup.ts", [file], env);
    expect(again).toMatchObject({
      code: 1,
      complained: expect.stringContaining("is there already"),
    });

    const enough = hand.saved().length + 50;
    await page.until(() => hand.saved().length >= enough);
    await hand.stop();
    const after = hand.saved();
    const listed = await ask(hub.url, `/api/sheets/${sheet}/links`, { cookie });
    const { links: all } = listed.body as { links: { link: string; role: string }[] };
    const view = all.find(({ role }) => role === "view")?.link;
    await ask(hub.url, `/api/sheets/${sheet}/links/${view}`, { method: "DELETE", cookie });
    await createSheet(hub.url); // known to nobody but the database

    const early = await runCommand("server/restore.ts", [file], env);
    expect(early).toMatchObject({ code: 1, said: "" });
    expect(early.complained).toMatch(/^Nothing was restored: .* in use by process \d+/);
    expect(await hub.end("SIGTERM")).toBe(0);
    const restored = await runCommand("server/restore.ts", [file], env);
    expect(restored).toMatchObject({ code: 0, complained: "" });
    expect(restored.said).toContain("1 sheets are only in there");

    hub = await startHubProcess(folder.path);
    const back = await open();
    const there = new Set(back.strokes());
    expect(before.filter((id) => !there.has(id))).toEqual([]);
    expect(after.filter((id) => !there.has(id)).length).toBeGreaterThanOrEqual(50);
    const [then, now] = [page.hello?.generation ?? 0, back.hello?.generation ?? 0];
    expect(now).toBeGreaterThan(then);
    const secret = links.view;
    const byRevoked = { method: "POST", body: { sheet, secret } };
    expect(await ask(hub.url, "/api/enter", byRevoked)).toMatchObject({ status: 404 });
    await back.close();
    await hub.end("SIGTERM");

    const aside = /restore -- (\S+\.db)/.exec(restored.said)?.[1] ?? "";
    expect(await runCommand("server/restore.ts", [aside], env)).toMatchObject({ code: 0 });
    hub = await startHubProcess(folder.path);
    const undone = await open();
    expect(undone.strokes()).toEqual(after.toSorted());
    expect(undone.hello?.generation).toBeGreaterThan(now);
    await undone.close();
    await hub.end("SIGTERM");
  });

  it("says how it is called to whoever calls it otherwise", async () => {
    const usage = { code: 2, complained: expect.stringContaining("usage: npm run") };
    expect(await runCommand("server/restore.ts", [], env)).toMatchObject(usage);
    expect(await runCommand("server/backup.ts", ["--help"], env)).toMatchObject(usage);
  });
});
