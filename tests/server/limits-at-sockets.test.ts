import { afterAll, beforeAll, beforeEach, describe, expect, it } from "vitest";
import type { RunningHub } from "../../server/start-hub";
import { CLOSE } from "../../shared/close-code";
import { LIMITS } from "../../shared/limits";
import { encodeLive, MESSAGE } from "../../shared/protocol";
import { connect, openPage } from "../support/hub-client";
import { sheetWithPeople, startTestHub, temporaryFolder } from "../support/hub-under-test";

describe("what a socket may do", () => {
  const folder = temporaryFolder();
  let running: RunningHub;
  let people: Awaited<ReturnType<typeof sheetWithPeople>>;
  let room = 0; // bytes that a document is made to have left; 0: as many as it has

  beforeAll(async () => {
    running = await startTestHub(folder.path, {
      wrapStore: (store) => ({
        ...store,
        async loadDocument(...which) {
          const stored = await store.loadDocument(...which);
          if (stored === null || room === 0) return stored;
          return { ...stored, size: LIMITS.documentBytes - room };
        },
      }),
    });
  });
  afterAll(async () => {
    await running.stop();
    folder.remove();
  });
  beforeEach(async () => {
    room = 0;
    people = await sheetWithPeople(running.url);
  });
  const at = (who: "owner" | "draw") => ({
    ...{ url: running.url, sheet: people.sheet, cookie: people.cookies[who] },
  });

  it("is read no faster than its pace, and all it sends is done", async () => {
    const page = await openPage(at("draw"));
    const count = LIMITS.messagesBurst + LIMITS.messagesPerSecond;
    const answers = () => page.heard.filter((type) => type === MESSAGE.awareness).length;
    const since = performance.now();
    for (let turn = 0; turn < count; turn++) page.send(Uint8Array.of(MESSAGE.queryAwareness));
    await page.until(() => answers() >= count);
    await page.roundTrip(); // what came in one piece was done at once; what comes after it waits for the pace
    expect(performance.now() - since).toBeGreaterThan(900); // a second's worth beyond the burst
    await page.close();
  });

  it("writes into a document up to its size, and not beyond it", async () => {
    room = 400;
    const page = await openPage(at("draw"));
    page.draw("fits", new Uint8Array(100));
    await page.allSaved();
    page.draw("does not", new Uint8Array(400));
    await page.until(() => page.refused.length > 0);
    expect(page.refused).toMatchObject([{ code: "full", frame: page.sent }]);
    const after = await openPage(at("owner"));
    expect(after.strokes()).toEqual(["fits"]);
    await Promise.all([page.close(), after.close()]);
  });

  it("passes no live ink on that is larger than it may be", async () => {
    const [anna, ben] = [await openPage(at("owner")), await openPage(at("draw"))];
    anna.send(encodeLive(new Uint8Array(LIMITS.liveBytes + 1)));
    anna.sendLive(7);
    await ben.until(() => ben.live.length > 0);
    expect(ben.live[0]?.payload).toEqual([7]);
    await Promise.all([anna.close(), ben.close()]);
  });

  it("is one of so many at a document, and the next is told to come back", async () => {
    const seated = await Promise.all(
      Array.from({ length: LIMITS.connectionsPerDocument }, () => connect(at("draw"))),
    );
    await Promise.all(seated.map((page) => page.until(() => page.hello !== null)));
    const late = await connect(at("owner"));
    await late.until(() => late.closed !== null);
    expect(late.closed).toBe(CLOSE.crowded);
    const notes = await openPage({ ...at("owner"), document: "critique" });
    expect(notes.closed).toBeNull(); // another document has its own
    await Promise.all([...seated, notes].map((page) => page.close()));
  });
});
