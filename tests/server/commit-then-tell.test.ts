import { afterEach, beforeEach, describe, expect, it } from "vitest";
import type { RunningHub } from "../../server/start-hub";
import type { Store } from "../../server/store/store";
import { StoreError } from "../../server/store/store-error";
import { MESSAGE } from "../../shared/protocol";
import { openPage } from "../support/hub-client";
import { sheetWithPeople, startTestHub, temporaryFolder } from "../support/hub-under-test";

/** Stands between hub and database: while it is shut, no commit gets through. */
function gatedStore() {
  let opened = Promise.resolve();
  let open = () => {};
  let failures = 0;
  let commits = 0;
  return {
    shut() {
      opened = new Promise((resolve) => {
        open = resolve;
      });
    },
    open: () => open(),
    failNext: (times: number) => {
      failures = times;
    },
    commits: () => commits,
    wrap: (store: Store): Store => ({
      ...store,
      async appendUpdates(batch) {
        await opened;
        if (failures-- > 0) throw new StoreError("full", "the disk is full");
        commits++;
        return await store.appendUpdates(batch);
      },
    }),
  };
}

describe("commit before tell", () => {
  const folder = temporaryFolder();
  const disk = gatedStore();
  let running: RunningHub;
  let people: Awaited<ReturnType<typeof sheetWithPeople>>;
  const open = (who: "owner" | "draw" | "view") =>
    openPage({ url: running.url, sheet: people.sheet, cookie: people.cookies[who] });

  beforeEach(async () => {
    running = await startTestHub(folder.path, { wrapStore: disk.wrap });
    people = await sheetWithPeople(running.url);
  });
  afterEach(async () => {
    disk.open();
    await running.stop();
    folder.remove();
  });

  it("shows a stroke to nobody and calls nothing saved while the disk is busy", async () => {
    const [anna, ben] = [await open("owner"), await open("draw")];
    disk.shut();
    anna.draw("held");
    await anna.roundTrip();
    await ben.roundTrip();
    expect(ben.strokes()).toEqual([]);
    expect(anna.saved).toBeLessThan(anna.sent);
    disk.open();
    await anna.allSaved();
    await ben.until(() => ben.strokes().includes("held"));
  });

  it("makes someone who comes in wait for what is not committed yet", async () => {
    const anna = await open("owner");
    disk.shut();
    anna.draw("held");
    await anna.roundTrip();
    const coming = open("draw");
    await anna.roundTrip();
    await anna.roundTrip();
    disk.open();
    const ben = await coming;
    expect(ben.strokes()).toEqual(["held"]);
    expect(ben.heard[0]).toBe(MESSAGE.hello);
  });

  it("passes live ink on while the disk is busy", async () => {
    const [anna, ben] = [await open("owner"), await open("draw")];
    disk.shut();
    anna.draw("held");
    anna.sendLive(1, 2, 3);
    await ben.until(() => ben.live.length > 0);
    expect(ben.strokes()).toEqual([]);
  });

  it("puts what gathers during one commit into the next", async () => {
    const anna = await open("owner");
    const before = disk.commits();
    disk.shut();
    for (const id of ["a", "b", "c", "d", "e"]) anna.draw(id);
    await anna.roundTrip();
    disk.open();
    await anna.allSaved();
    expect(disk.commits() - before).toBeLessThanOrEqual(2);
  });

  it("tries a failed commit again, keeps its order, and says how the disk does", async () => {
    const [anna, ben] = [await open("owner"), await open("draw")];
    disk.failNext(3);
    anna.draw("one");
    anna.draw("two");
    await anna.allSaved();
    expect(anna.storage.map(({ state }) => state)).toEqual(["full", "full", "full", "ok"]);
    await ben.until(() => ben.strokes().length === 2);
    expect(ben.storage.at(-1)?.state).toBe("ok");
  });

  it("never sends a stroke back to its author", async () => {
    const anna = await open("owner");
    const before = anna.heard.filter((type) => type === MESSAGE.sync).length;
    anna.draw("mine");
    await anna.allSaved();
    await anna.roundTrip();
    expect(anna.heard.filter((type) => type === MESSAGE.sync)).toHaveLength(before);
  });
});
