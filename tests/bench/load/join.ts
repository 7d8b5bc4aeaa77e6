import * as Y from "yjs";
import { encodeSync, SYNC } from "../../../shared/protocol";
import { atMost, passed } from "./config";
import { cpuSeconds, memory } from "./cost";
import { bytesRead, openLight, openWhole } from "./pages";
import type { Figures } from "./round";
import { frameOfUpdate, updatesOf } from "./strokes";
import type { Place, Served } from "./targets";

const STROKES = 7200;
const AUTHORS = 4;
const STROKE_BYTES = 120;
const JOINS = 5; // one after another
const AT_ONCE = 50;
const LONGEST_MS = 30_000;
const ROOM = "joined";
const WHOLE = 254; // what the bare relay keeps as the room's whole

/** Coming into a board that has been drawn on for hours. */
export async function join(server: Served): Promise<Figures> {
  const state = await drawAll(server);
  const warm: number[] = [];
  let bytes = 0;
  for (let time = 0; time < JOINS; time++) {
    const { ms, read } = await comeIn(await server.place(ROOM), server.target !== "relay");
    warm.push(ms);
    bytes = read;
  }
  const storm = await allAtOnce(server);
  let cold = null;
  if (server.target === "hub") {
    await server.restart();
    cold = await comeIn(await server.place(ROOM), true);
  }
  return {
    warmMs: warm.sort((a, b) => a - b)[JOINS >> 1] ?? Number.NaN,
    bytesOverState: bytes / state,
    ...storm,
    coldMs: cold?.ms ?? Number.NaN,
    strokesAtSynced: cold?.atSynced ?? Number.NaN,
  };
}

/** Answers the bytes that the whole document takes. */
async function drawAll(server: Served): Promise<number> {
  let seen = 0;
  const isAnswered = server.target !== "relay";
  const watcher = await openLight(await server.place(ROOM), isAnswered, () => seen++);
  const doc = new Y.Doc();
  for (let author = 0; author < AUTHORS; author++) {
    const updates = updatesOf(author, STROKES / AUTHORS, STROKE_BYTES);
    const page = await openLight(await server.place(ROOM), isAnswered, () => {});
    for (const [index, update] of updates.entries()) {
      Y.applyUpdate(doc, update);
      if (isAnswered) page.send(frameOfUpdate(update));
      if (index % 100 === 99) await passed(2);
    }
    await atMost(LONGEST_MS, () => !isAnswered || seen === updates.length * (author + 1));
    page.close();
  }
  const state = Y.encodeStateAsUpdate(doc);
  if (!isAnswered) {
    watcher.send(Buffer.concat([Buffer.of(WHOLE), encodeSync(SYNC.step2, state)]));
    await passed(100);
  }
  watcher.close();
  return state.length;
}

/** A page that holds the document comes in, and goes again. */
async function comeIn(place: Place, isAnswered: boolean) {
  const since = performance.now();
  const page = await openWhole(place, isAnswered);
  const count = () => page.doc.getMap("strokes").size;
  const atSynced = count();
  await page.until(() => count() === STROKES || page.closed !== null);
  const ms = performance.now() - since;
  const read = bytesRead(page.socket);
  await page.close();
  return { ms, read, atSynced };
}

/** Fifty pages in the same moment, that only look whether every stroke comes. */
async function allAtOnce(server: Served) {
  const places = await Promise.all(Array.from({ length: AT_ONCE }, () => server.place(ROOM)));
  const before = { cpu: cpuSeconds(server.pid), rss: memory(server.pid).now };
  const since = performance.now();
  let most = before.rss;
  const pages = await Promise.all(
    places.map(async (place) => {
      let left = STROKES;
      let at = Number.NaN;
      const page = await openLight(place, false, () => {
        if (--left === 0) at = performance.now() - since;
      });
      await atMost(LONGEST_MS, () => left <= 0);
      most = Math.max(most, memory(server.pid).now);
      return { page, at };
    }),
  );
  const stormMs = Math.max(...pages.map(({ at }) => at));
  const stormCpu = cpuSeconds(server.pid) - before.cpu;
  for (const { page } of pages) page.close();
  return { stormMs, stormCpu, stormGrowth: most - before.rss };
}
