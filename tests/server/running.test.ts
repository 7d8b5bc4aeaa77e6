import { afterEach, beforeEach, describe, expect, it } from "vitest";
import type { RunningHub } from "../../server/start-hub";
import type { Store } from "../../server/store/store";
import { StoreError } from "../../server/store/store-error";
import { LIMITS } from "../../shared/limits";
import { openPage } from "../support/hub-client";
import { sheetWithPeople, startTestHub, temporaryFolder } from "../support/hub-under-test";

/** A database on which nothing can be written while it is shut. */
function fickleStore() {
  let shut = false;
  const guarded = <Args extends unknown[], Result>(run: (...args: Args) => Promise<Result>) => {
    return async (...args: Args) => {
      if (shut) throw new StoreError("full", "the disk is full");
      return run(...args);
    };
  };
  return {
    shut: (is: boolean) => {
      shut = is;
    },
    wrap: (store: Store): Store => ({
      ...store,
      appendUpdates: guarded(store.appendUpdates),
      probe: guarded(store.probe),
    }),
  };
}

describe("the doors for watchers", () => {
  const folder = temporaryFolder();
  const disk = fickleStore();
  let running: RunningHub;
  const door = (path: string) => fetch(`http://127.0.0.1:${running.healthPort}${path}`);

  beforeEach(async () => {
    disk.shut(false);
    running = await startTestHub(folder.path, {
      wrapStore: disk.wrap,
      health: { port: 0, insist: true },
      graceMs: 300,
    });
  });
  afterEach(async () => {
    disk.shut(false);
    await running.stop();
    folder.remove();
  });

  it("say that the process lives and takes people in", async () => {
    const statuses = ["/livez", "/readyz", "/metrics", "/"].map(async (path) => {
      const { status } = await door(path);
      return status;
    });
    expect(await Promise.all(statuses)).toEqual([200, 200, 200, 404]);
  });

  it("say that nobody should be sent here while nothing can be written, and say when it is over", async () => {
    disk.shut(true);
    const shut = await door("/readyz");
    expect(shut.status).toBe(503);
    expect(await shut.json()).toMatchObject({ ready: false, why: "storage" });
    expect((await door("/livez")).status).toBe(200);
    disk.shut(false);
    expect((await door("/readyz")).status).toBe(200);
  });

  it("say so while the hub goes, and are the last to close", async () => {
    const { sheet, cookies } = await sheetWithPeople(running.url);
    const page = await openPage({ url: running.url, sheet, cookie: cookies.draw });
    const stopping = running.stop();
    const answer = await door("/readyz");
    expect(answer.status).toBe(503);
    expect(await answer.json()).toMatchObject({ why: "going" });
    await page.until(() => page.closed !== null);
    expect(await stopping).toBe(0);
  });

  it("count what happens, and name no sheet and no device", async () => {
    const { sheet, cookies, links } = await sheetWithPeople(running.url);
    const [anna, eve] = [
      await openPage({ url: running.url, sheet, cookie: cookies.draw }),
      await openPage({ url: running.url, sheet, cookie: cookies.view }),
    ];
    anna.draw("one");
    await anna.allSaved();
    for (let piece = 0; piece < 2 * LIMITS.liveBurst; piece++) anna.sendLive(piece);
    await anna.roundTrip();
    eve.draw("not hers");
    await eve.until(() => eve.refused.length > 0);
    const text = await (await door("/metrics")).text();
    expect(text).toContain('heelstrip_sockets{role="draw"} 1');
    expect(text).toContain('heelstrip_rooms{state="open"} 1');
    expect(text).toContain('heelstrip_refused_total{code="role"} 1');
    expect(text).toMatch(/heelstrip_commit_seconds_count [1-9]/);
    expect(text).toMatch(/heelstrip_broadcast_seconds_count [1-9]/);
    expect(text).toMatch(/heelstrip_join_bytes_count 2\b/);
    expect(text).toMatch(/heelstrip_document_bytes [1-9]\d{2,}/);
    expect(text).toMatch(/heelstrip_coalesced_total\{what="live"\} [1-9]/);
    for (const secret of [sheet, links.draw, cookies.draw.split("=")[1] ?? ""]) {
      expect(secret.length).toBeGreaterThan(10);
      expect(text).not.toContain(secret);
    }
    await Promise.all([anna.close(), eve.close()]);
  });
});
