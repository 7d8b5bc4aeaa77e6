import { beforeEach, describe, expect, it } from "vitest";
import * as Y from "yjs";
import { DOCUMENT_ROOTS } from "../../shared/document-shape";
import { LIMITS } from "../../shared/limits";
import { encodeSync, SYNC } from "../../shared/protocol";
import { type HubClient, openPage } from "../support/hub-client";
import { sheetWithPeople } from "../support/hub-under-test";
import { oneHub } from "../support/one-hub";

/** What one change under a client id amounts to, on top of what is there. */
function changeOf(client: number, change: (doc: Y.Doc) => void, base?: Uint8Array): Uint8Array {
  const doc = new Y.Doc();
  if (base !== undefined) Y.applyUpdate(doc, base);
  doc.clientID = client;
  const before = Y.encodeStateVector(doc);
  change(doc);
  return Y.encodeStateAsUpdate(doc, before);
}

describe("what a document takes", () => {
  const hub = oneHub();
  let people: Awaited<ReturnType<typeof sheetWithPeople>>;
  let anna: HubClient;
  let ben: HubClient;
  const open = (who: "owner" | "draw", document: "drawing" | "critique" = "drawing") =>
    openPage({ url: hub.url, sheet: people.sheet, document, cookie: people.cookies[who] });

  beforeEach(async () => {
    people = await sheetWithPeople(hub.url);
    anna = await open("owner");
    ben = await open("draw");
    return () => Promise.all([anna.close(), ben.close()]);
  });

  /** Sends an update as it is; answers the code it was refused with, or null. */
  async function offer(page: HubClient, update: Uint8Array): Promise<string | null> {
    const refusals = page.refused.length;
    page.send(encodeSync(SYNC.update, update));
    const frame = page.sent;
    await page.until(() => page.refused.length > refusals || page.saved >= frame);
    return page.refused.at(refusals)?.code ?? null;
  }

  it.each([
    ["a list", (doc: Y.Doc) => doc.getArray("strokes").insert(0, ["a"])],
    ["a text", (doc: Y.Doc) => doc.getText("strokes").insert(0, "a")],
    ["a list within a map", (doc: Y.Doc) => doc.getMap("strokes").set("a", new Y.Array())],
    ["a text within a map", (doc: Y.Doc) => doc.getMap("strokes").set("a", new Y.Text("a"))],
    ["XML", (doc: Y.Doc) => doc.getMap("strokes").set("a", new Y.XmlElement("script"))],
    ["a document", (doc: Y.Doc) => doc.getMap("strokes").set("a", new Y.Doc())],
    ["a map of a name that there is not", (doc: Y.Doc) => doc.getMap("attic").set("a", 1)],
    ["the other document's map", (doc: Y.Doc) => doc.getMap("notes").set("a", 1)],
    ["a name without end", (doc: Y.Doc) => doc.getMap("strokes").set("a".repeat(201), 1)],
    [
      "bytes without end",
      (doc: Y.Doc) => doc.getMap("strokes").set("a", new Uint8Array(LIMITS.strokeBytes + 1)),
    ],
    ["a value without a bottom", (doc: Y.Doc) => doc.getMap("strokes").set("a", nested(20))],
  ])("is never %s", async (_what, change) => {
    expect(await offer(anna, changeOf(7, change))).toBe("content");
    const later = await open("owner");
    expect(later.strokes()).toEqual([]);
    await later.close();
  });

  it("is maps, bytes and plain values, in every map it has", async () => {
    const notes = await open("owner", "critique");
    const fill = (doc: Y.Doc, roots: readonly string[]) => {
      for (const root of roots) {
        const map = doc.getMap(root);
        map.set("value", { points: [[1, 2], null], text: "a", flag: true });
        map.set("bytes", new Uint8Array(LIMITS.strokeBytes));
        map.set("inner", new Y.Map([["side.left-knee", [1, 2, 0.5]]]));
        map.delete("value");
      }
    };
    fill(anna.doc, DOCUMENT_ROOTS.drawing);
    fill(notes.doc, DOCUMENT_ROOTS.critique);
    await Promise.all([anna.allSaved(), notes.allSaved()]);
    expect([...anna.refused, ...notes.refused]).toEqual([]);
    await notes.close();
  });

  it("is what its first writer's device goes on with, and no other device", async () => {
    const first = changeOf(7, (doc) => doc.getMap("strokes").set("first", 1));
    expect(await offer(anna, first)).toBeNull();
    expect(await offer(ben, first)).toBeNull(); // to repeat is no writing
    const theft = changeOf(7, (doc) => doc.getMap("strokes").set("stolen", 1), first);
    expect(await offer(ben, theft)).toBe("owner");
    const later = await open("owner");
    expect(later.strokes()).toEqual(["first"]);
    await later.close();
    const own = changeOf(7, (doc) => doc.getMap("strokes").set("second", 1), first);
    expect(await offer(anna, own)).toBeNull();
    await ben.until(() => ben.strokes().includes("second"));
  });

  it.each([
    ["another stroke", (map: Y.Map<unknown>) => map.set("other", 1)],
    ["the same stroke with other ink", (map: Y.Map<unknown>) => map.set("first", 2)],
    ["bytes in place of a value", (map: Y.Map<unknown>) => map.set("first", Uint8Array.of(1))],
    ["a map in place of a value", (map: Y.Map<unknown>) => map.set("first", new Y.Map())],
  ])(
    "is said once: %s at the same place is refused, from the same device too",
    async (_what, say) => {
      const said = (write: typeof say) => changeOf(7, (doc) => write(doc.getMap("strokes")));
      const first = said((map) => map.set("first", 1));
      expect(await offer(anna, first)).toBeNull();
      const copy = await open("owner");
      expect(await offer(copy, first)).toBeNull();
      expect(await offer(copy, said(say))).toBe("owner");
      expect(copy.saved).toBe(copy.sent - 1); // what is nowhere is not called saved
      await copy.close();
    },
  );

  it("is said once, also where the first of two stands behind another stroke", async () => {
    const base = changeOf(7, (doc) => {
      doc.getMap("strokes").set("one", 1);
      doc.getMap("strokes").set("two", 1);
    });
    expect(await offer(anna, base)).toBeNull();
    const over = (key: string) => changeOf(7, (doc) => doc.getMap("strokes").set(key, 2), base);
    expect(await offer(anna, over("one"))).toBeNull();
    expect(await offer(anna, over("one"))).toBeNull();
    expect(await offer(anna, over("two"))).toBe("owner");
  });

  it("may be repeated by whoever still has what was deleted since", async () => {
    const drawn = changeOf(7, (doc) => doc.getMap("strokes").set("gone", new Uint8Array(9)));
    expect(await offer(anna, drawn)).toBeNull();
    await ben.until(() => ben.strokes().includes("gone"));
    ben.doc.getMap("strokes").delete("gone");
    await ben.allSaved();
    expect(await offer(anna, drawn)).toBeNull();
    expect(await offer(ben, Y.encodeStateAsUpdate(ben.doc))).toBeNull();
  });

  it("lets a device delete what another one drew", async () => {
    const first = changeOf(7, (doc) => doc.getMap("strokes").set("first", 1));
    expect(await offer(anna, first)).toBeNull();
    await ben.until(() => ben.strokes().includes("first"));
    ben.doc.getMap("strokes").delete("first");
    await ben.allSaved();
    await anna.until(() => anna.strokes().length === 0);
  });

  it("remembers its writers when the hub was started anew", async () => {
    const first = changeOf(7, (doc) => doc.getMap("strokes").set("first", 1));
    expect(await offer(anna, first)).toBeNull();
    await hub.restart();
    [anna, ben] = [await open("owner"), await open("draw")];
    const theft = changeOf(7, (doc) => doc.getMap("strokes").set("stolen", 1), first);
    expect(await offer(ben, theft)).toBe("owner");
    const own = changeOf(7, (doc) => doc.getMap("strokes").set("second", 1), first);
    expect(await offer(anna, own)).toBeNull();
  });
});

function nested(depth: number): unknown {
  return depth === 0 ? 1 : [nested(depth - 1)];
}
