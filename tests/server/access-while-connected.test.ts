import { afterAll, beforeAll, beforeEach, describe, expect, it } from "vitest";
import type { RunningHub } from "../../server/start-hub";
import type { Store } from "../../server/store/store";
import type { LinkCreated } from "../../shared/api-answers";
import { CLOSE } from "../../shared/close-code";
import type { Role } from "../../shared/role";
import { gate } from "../support/hand-clock";
import { connect, type HubClient, openPage } from "../support/hub-client";
import {
  ask,
  enter,
  sheetWithPeople,
  startTestHub,
  temporaryFolder,
} from "../support/hub-under-test";

describe("a right that changes while somebody is connected", () => {
  const folder = temporaryFolder();
  let running: RunningHub;
  let store: Store;
  let asked = gate();
  let people: Awaited<ReturnType<typeof sheetWithPeople>>;
  let path: string;

  beforeAll(async () => {
    asked.open();
    running = await startTestHub(folder.path, {
      wrapStore: (real) => {
        store = real;
        return {
          ...real,
          // Of other sheets it answers at once: the poll may ask for everybody at any moment.
          async grantOf(device, sheet, at) {
            if (sheet === people.sheet) await asked.passed;
            return real.grantOf(device, sheet, at);
          },
        };
      },
    });
  });
  afterAll(async () => {
    await running.stop();
    folder.remove();
  });
  beforeEach(async () => {
    people = await sheetWithPeople(running.url);
    path = `/api/sheets/${people.sheet}/links`;
  });

  const owner = (method: string, where: string, body?: unknown) =>
    ask(running.url, where, {
      ...{ method, cookie: people.cookies.owner },
      ...(body === undefined ? {} : { body }),
    });
  async function newLink(role: Role, more: object = {}): Promise<LinkCreated> {
    const { status, body } = await owner("POST", path, { role, label: "", ...more });
    expect(status).toBe(201);
    return body as LinkCreated;
  }
  async function guestBy(
    secret: string,
    cookie?: string,
  ): Promise<{ page: HubClient; cookie: string }> {
    const { url } = running;
    const own = cookie ?? (await enter(url, people.sheet, secret));
    return { page: await openPage({ url, sheet: people.sheet, cookie: own }), cookie: own };
  }

  it("rises without coming back, and holds from the next frame", async () => {
    const { link, secret } = await newLink("view");
    const { page } = await guestBy(secret);
    expect((await owner("PATCH", `${path}/${link}`, { role: "draw" })).status).toBe(204);
    await page.until(() => page.roles.at(-1) === "draw");
    page.draw("now allowed");
    await page.allSaved();
    expect(page.refused).toEqual([]);
    await page.close();
  });

  it("falls without coming back, and what is sent from then on is refused", async () => {
    const { link, secret } = await newLink("draw");
    const { page } = await guestBy(secret);
    page.draw("before");
    await page.allSaved();
    await owner("PATCH", `${path}/${link}`, { role: "view" });
    page.draw("after");
    await page.until(() => page.refused.length > 0);
    expect(page.roles).toEqual(["view"]);
    expect(page.refused).toMatchObject([{ code: "role", frame: page.sent }]);
    expect(page.closed).toBeNull();
    await page.close();
  });

  it("rises when the device comes in by a stronger link", async () => {
    const weak = await newLink("view");
    const strong = await newLink("draw");
    const { page, cookie } = await guestBy(weak.secret);
    await ask(running.url, "/api/enter", {
      ...{ method: "POST", cookie },
      body: { sheet: people.sheet, secret: strong.secret },
    });
    await page.until(() => page.roles.at(-1) === "draw");
    await page.close();
  });

  it("falls to the weaker link that is left when the stronger one is revoked", async () => {
    const weak = await newLink("view");
    const strong = await newLink("draw");
    const { cookie, page: first } = await guestBy(weak.secret);
    await first.close();
    await ask(running.url, "/api/enter", {
      ...{ method: "POST", cookie },
      body: { sheet: people.sheet, secret: strong.secret },
    });
    const { page } = await guestBy("", cookie);
    expect(page.hello?.role).toBe("draw");
    await owner("DELETE", `${path}/${strong.link}`);
    await page.until(() => page.roles.at(-1) === "view");
    expect(page.closed).toBeNull();
    await page.close();
  });

  it("ends within a second of a revocation, with what was read and not yet done", async () => {
    const { link, secret } = await newLink("draw");
    const { page } = await guestBy(secret);
    const watcher = await openPage({
      ...running,
      sheet: people.sheet,
      cookie: people.cookies.view,
    });
    const since = Date.now();
    await owner("DELETE", `${path}/${link}`);
    page.draw("too late");
    await page.until(() => page.closed !== null);
    expect(page.closed).toBe(CLOSE.revoked);
    expect(Date.now() - since).toBeLessThan(1000);
    await watcher.roundTrip();
    expect(watcher.strokes()).toEqual([]);
    await watcher.close();
  });

  it("ends for somebody who draws without a pause, and keeps nothing that was drawn after the answer", async () => {
    const { link, secret } = await newLink("draw");
    const { page } = await guestBy(secret);
    let drawn = 0;
    const drawOn = () => {
      if (page.closed !== null) return;
      page.draw(`stroke ${drawn++}`);
      setTimeout(drawOn, 2); // within its pace, so that each is read as it comes
    };
    drawOn();
    await page.until(() => page.saved > 5);
    await owner("DELETE", `${path}/${link}`);
    const answered = drawn;
    page.draw("in the moment of the answer");
    const promised = page.saved;
    await page.until(() => page.closed !== null);
    expect(page.closed).toBe(CLOSE.revoked);
    const after = await openPage({
      ...running,
      sheet: people.sheet,
      cookie: people.cookies.owner,
    });
    const there = after.strokes();
    expect(there).not.toContain("in the moment of the answer");
    expect(there.length).toBeLessThanOrEqual(answered);
    expect(there.length).toBeGreaterThanOrEqual(promised - 1); // the first of its frames was its answer
    await after.close();
  });

  it("is waited for: nothing of the page is done while the database is slow to answer", async () => {
    const { link, secret } = await newLink("draw");
    const { page } = await guestBy(secret);
    const watcher = await openPage({
      ...running,
      sheet: people.sheet,
      cookie: people.cookies.view,
    });
    const other = await sheetWithPeople(running.url);
    const bystander = await openPage({
      ...running,
      sheet: other.sheet,
      cookie: other.cookies.view,
    });
    await store.changeLink({
      sheet: people.sheet as never,
      link,
      role: "view",
      at: Date.now(),
      by: null,
    });
    asked = gate();
    running.hub.reviewAccess(people.sheet as never);
    page.draw("while in doubt");
    page.sendLive(1);
    for (let turn = 0; turn < 5; turn++) await bystander.roundTrip();
    expect(page.refused).toEqual([]);
    expect(watcher.live).toEqual([]);
    asked.open();
    await page.until(() => page.refused.length > 0);
    expect(page.roles).toEqual(["view"]);
    await watcher.roundTrip();
    expect(watcher.strokes()).toEqual([]);
    expect(watcher.live).toEqual([]);
    await Promise.all([page.close(), watcher.close(), bystander.close()]);
  });

  it("ends when the link does, and the link opens nothing any more", async () => {
    const { secret } = await newLink("draw", { expiresAt: Date.now() + 1500 });
    const { page, cookie } = await guestBy(secret);
    page.draw("in time");
    await page.allSaved();
    await page.until(() => page.closed !== null);
    expect(page.closed).toBe(CLOSE.revoked);
    const again = connect({ url: running.url, sheet: people.sheet, cookie });
    await expect(again).rejects.toThrow("status 404");
    await expect(enter(running.url, people.sheet, secret)).rejects.toThrow("status 404");
  });

  it("ends within the poll when another instance revoked the link", async () => {
    const { link, secret } = await newLink("draw");
    const { page } = await guestBy(secret);
    // As another instance would: in the database, and without a word to this one.
    await store.revokeLink({ sheet: people.sheet as never, link, at: Date.now(), by: null });
    const since = Date.now();
    await page.until(() => page.closed !== null);
    expect(page.closed).toBe(CLOSE.revoked);
    expect(Date.now() - since).toBeLessThan(5000);
  });

  it("is another generation for pages of a sheet that was put back, and their past stays out", async () => {
    const { url } = running;
    const page = await openPage({ url, sheet: people.sheet, cookie: people.cookies.draw });
    page.draw("of the past");
    await page.allSaved();
    const raised = await store.raiseGeneration(people.sheet as never, null, Date.now());
    if (raised === null) throw new Error("the sheet is there");
    page.draw("still of the past");
    await page.until(() => page.closed !== null);
    expect(page.closed).toBe(CLOSE.otherGeneration);
    const knows = { url, sheet: people.sheet, cookie: people.cookies.draw };
    const back = await connect({ ...knows, doc: page.doc, generation: 1 });
    await back.until(() => back.closed !== null);
    expect(back.closed).toBe(CLOSE.otherGeneration);
    expect(back.hello?.generation).toBe(raised);
    const fresh = await openPage({ ...knows, generation: raised });
    expect(fresh.strokes()).toEqual(["of the past"]); // what was stored before it was put back
    await fresh.close();
  });
});
