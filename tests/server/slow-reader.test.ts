import { describe, expect, it } from "vitest";
import { MESSAGE } from "../../shared/protocol";
import { openPage } from "../support/hub-client";
import { createSheet, enter } from "../support/hub-under-test";
import { oneHub } from "../support/one-hub";

const STROKES = 40;
const STROKE_BYTES = 300_000; // 12 MB in all: more than the buffers between two sockets hold

describe("a reader that stands still for a while", () => {
  const hub = oneHub();

  it("costs the hub little, holds up nobody, and has everything in the end", async () => {
    const { sheet, links } = await createSheet(hub.url);
    const cookie = await enter(hub.url, sheet, links.draw);
    const page = { url: hub.url, sheet, cookie };
    const [anna, ben, slow] = [await openPage(page), await openPage(page), await openPage(page)];
    const updatesOf = (heard: readonly number[]) =>
      heard.filter((type) => type === MESSAGE.sync).length;
    const before = updatesOf(slow.heard);
    slow.socket.pause();
    for (let stroke = 0; stroke < STROKES; stroke++) {
      anna.draw(`${stroke}`, new Uint8Array(STROKE_BYTES).fill(stroke));
    }
    await anna.allSaved();
    await ben.until(() => ben.strokes().length === STROKES);
    slow.socket.resume();
    await slow.until(() => slow.strokes().length === STROKES);
    // Some came one by one before it was too far behind; the rest came as one.
    expect(updatesOf(slow.heard) - before).toBeLessThan(STROKES);
    await Promise.all([anna.close(), ben.close(), slow.close()]);
  });
});
