import { beforeEach, describe, expect, it } from "vitest";
import * as Y from "yjs";
import { CLOSE } from "../../shared/close-code";
import { LIMITS } from "../../shared/limits";
import { encodeSync, SYNC } from "../../shared/protocol";
import { type HubClient, openPage } from "../support/hub-client";
import { createSheet, enter } from "../support/hub-under-test";
import { oneHub } from "../support/one-hub";

describe("an update that is not fit", () => {
  const hub = oneHub();
  let sheet: string;
  let cookie: string;
  let anna: HubClient;
  let ben: HubClient;
  const open = (doc?: Y.Doc) => {
    const page = { url: hub.url, sheet, cookie };
    return openPage(doc === undefined ? page : { ...page, doc });
  };

  beforeEach(async () => {
    const made = await createSheet(hub.url);
    ({ sheet } = made);
    cookie = await enter(hub.url, sheet, made.links.draw);
    anna = await open();
    ben = await open();
    return async () => {
      await anna.close();
      await ben.close();
    };
  });

  /** What a newcomer is given, as bytes: the committed document. */
  async function committed(): Promise<Uint8Array> {
    const page = await open();
    await page.close();
    return Y.encodeStateAsUpdate(page.doc);
  }

  /** Sends a raw update and waits until the hub has answered it. */
  async function offer(update: Uint8Array): Promise<void> {
    const refusals = anna.refused.length;
    anna.send(encodeSync(SYNC.update, update));
    await anna.until(() => anna.refused.length > refusals || anna.saved === anna.sent);
  }

  /** One stroke, drawn by somebody the hub has never heard of. */
  function strokeOf(
    client: number,
    id: string,
    base?: Uint8Array,
  ): { doc: Y.Doc; update: Uint8Array } {
    const doc = new Y.Doc();
    if (base !== undefined) Y.applyUpdate(doc, base);
    doc.clientID = client;
    const before = Y.encodeStateVector(doc);
    doc.getMap("strokes").set(
      id,
      Uint8Array.from({ length: 40 }, (_, index) => index),
    );
    return { doc, update: Y.encodeStateAsUpdate(doc, before) };
  }

  it("is refused wherever it was cut short, and never applied by half", async () => {
    const { update } = strokeOf(7, "cut", await committed());
    const before = await committed();
    for (let length = 0; length < update.length; length++) {
      await offer(update.subarray(0, length));
      expect(anna.refused.at(-1)?.code).toBe("damaged");
      if (anna.closed !== null) break;
    }
    expect(anna.closed).toBeNull();
    expect(anna.refused).toHaveLength(update.length);
    expect(await committed()).toEqual(before);
    await ben.roundTrip();
    expect(ben.strokes()).toEqual([]);
  });

  it("is refused where it jumps ahead, and does not wait in the document", async () => {
    const { doc } = strokeOf(7, "first");
    const afterFirst = Y.encodeStateVector(doc);
    doc.getMap("strokes").set("second", 2);
    await offer(Y.encodeStateAsUpdate(doc, afterFirst));
    expect(anna.refused).toMatchObject([{ frame: anna.sent, code: "resync" }]);
    expect((await open()).strokes()).toEqual([]);
  });

  it("is refused where it deletes what is not there", async () => {
    const { doc } = strokeOf(7, "first");
    const all = Y.encodeStateVector(doc);
    doc.getMap("strokes").delete("first");
    await offer(Y.encodeStateAsUpdate(doc, all));
    expect(anna.refused).toMatchObject([{ code: "resync" }]);
  });

  it("is refused where it hangs on something the hub never saw", async () => {
    const doc = new Y.Doc();
    doc.getArray("list").insert(0, ["unseen"]);
    const other = new Y.Doc();
    Y.applyUpdate(other, Y.encodeStateAsUpdate(doc));
    const before = Y.encodeStateVector(other);
    other.getArray("list").insert(1, ["behind it"]);
    await offer(Y.encodeStateAsUpdate(other, before));
    expect(anna.refused).toMatchObject([{ code: "resync" }]);
  });

  it("is refused where it brings a document within the document", async () => {
    const doc = new Y.Doc();
    doc.getMap("strokes").set("inner", new Y.Doc());
    await offer(Y.encodeStateAsUpdate(doc));
    expect(anna.refused).toMatchObject([{ code: "content" }]);
  });

  it("is refused where it is larger than an update may be", async () => {
    const doc = new Y.Doc();
    doc.getMap("strokes").set("huge", new Uint8Array(LIMITS.updateBytes));
    await offer(Y.encodeStateAsUpdate(doc));
    expect(anna.refused).toMatchObject([{ code: "size" }]);
    expect((await open()).strokes()).toEqual([]);
  });

  it("never lets the count of what is saved pass it", async () => {
    await anna.allSaved();
    const saved = anna.saved;
    anna.send(encodeSync(SYNC.update, Uint8Array.of(1, 2, 3)));
    anna.draw("later");
    await ben.until(() => ben.strokes().includes("later"));
    await anna.roundTrip();
    expect(anna.saved).toBe(saved);
    expect(anna.sent).toBe(saved + 2);
  });

  it("does not disturb the others", async () => {
    for (let turn = 0; turn < 10; turn++) anna.send(Uint8Array.of(0, 2, 200, turn));
    ben.draw("undisturbed");
    await ben.allSaved();
    expect((await open()).strokes()).toEqual(["undisturbed"]);
  });

  it("ends in the socket's being closed after more than twenty broken frames", async () => {
    for (let turn = 0; turn < 21; turn++) anna.send(Uint8Array.of(99, turn));
    await anna.until(() => anna.closed !== null);
    expect(anna.closed).toBe(CLOSE.badFrames);
    expect(ben.closed).toBeNull();
  });

  it("is told from a fit one that was sent twice, which changes nothing and is saved", async () => {
    const { update } = strokeOf(7, "once", await committed());
    await offer(update);
    await offer(update);
    expect(anna.refused).toEqual([]);
    expect(anna.saved).toBe(anna.sent);
    await ben.until(() => ben.strokes().includes("once"));
  });

  it("lets a page that comes back bring what it drew while it was away", async () => {
    anna.draw("together");
    await anna.allSaved();
    await anna.close();
    anna.draw("alone");
    const again = await open(anna.doc);
    expect(again.saved).toBe(again.sent);
    await ben.until(() => ben.strokes().includes("alone"));
    await again.close();
  });
});
