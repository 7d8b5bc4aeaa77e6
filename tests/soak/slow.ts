import * as Y from "yjs";
import { CLOSE } from "../../shared/close-code";
import { encodeLive } from "../../shared/protocol";
import { memory } from "../bench/load/cost";
import { type HubClient, openPage } from "../support/hub-client";
import { type HubProcess, startHubProcess } from "../support/hub-process";
import { createSheet, enter, temporaryFolder } from "../support/hub-under-test";
import { setup } from "../support/programs";

const MB = 38; // of live ink pass while one reader stands still
const LIVE_BYTES = 16 * 1024;
const LIVE_A_SECOND = 55; // each writer; within what one page may send in bytes
const WRITERS = 4; // so that the reader wakes before it is sent away, unless the machine is busy
const STROKES_A_SECOND = 10; // each
const STROKE_BYTES = 222;
const MOST_MIB = 20; // sources: the hub's design, measured
const MOST_CHANGE = 0.2;
const LEAST_CHANGE_MS = 2; // below which a share of a few milliseconds means nothing; our own choice
const CATCH_UP_MS = 30_000;

interface Passage {
  readonly p95: number;
  readonly rss: number;
  readonly strokes: readonly string[];
}

/** One reader stands still while live ink and strokes pass, and wakes; answers whom or what it cost. */
export async function soakSlow(): Promise<readonly string[]> {
  await setup();
  const folder = temporaryFolder();
  const hub = await startHubProcess(folder.path);
  try {
    const { sheet, links } = await createSheet(hub.url);
    const cookie = await enter(hub.url, sheet, links.draw);
    const come = (doc = new Y.Doc()) => openPage({ url: hub.url, sheet, cookie, doc });
    const writers = [];
    for (let writer = 0; writer < WRITERS; writer++) writers.push(await come());
    const healthy = await come();
    let slow = await come();
    const reading = await pass(hub, writers, healthy, "reading");
    slow.socket.pause();
    const standing = await pass(hub, writers, healthy, "standing");
    const asleep = slow.strokes().length;
    const since = performance.now();
    slow.socket.resume();
    const all = [...reading.strokes, ...standing.strokes];
    const has = () => all.every((id) => slow.doc.getMap("strokes").has(id));
    await Promise.race([slow.until(() => has() || slow.closed !== null), passed(CATCH_UP_MS)]);
    // On a busy machine it stands for longer than the hub waits, and comes back as a page does.
    const { closed } = slow;
    if (closed !== null) slow = await come(slow.doc);
    await Promise.race([slow.until(has), passed(CATCH_UP_MS)]);
    const found = { reading, standing, closed, converged: has() };
    const ms = performance.now() - since;
    console.error(
      `slow: ${all.length - asleep} strokes and ${MB} MB of live ink past a reader that stood still: grew ${(standing.rss - reading.rss).toFixed(1)} MiB; the healthy one's p95 ${reading.p95.toFixed(1)} → ${standing.p95.toFixed(1)} ms; ${closed === null ? "" : `sent away with ${closed}, `}caught up ${ms.toFixed(0)} ms after it woke`,
    );
    await Promise.all([...writers, healthy, slow].map((page) => page.close()));
    return judge(found);
  } finally {
    await hub.end("SIGTERM");
    folder.remove();
  }
}

/** So much live ink, and strokes at a human pace. Memory is the most that was seen. */
async function pass(
  hub: HubProcess,
  writers: readonly HubClient[],
  healthy: HubClient,
  name: string,
): Promise<Passage> {
  const sentAt = new Map<string, number>();
  const times: number[] = [];
  healthy.doc.getMap("strokes").observe((event) => {
    for (const id of event.keysChanged) {
      const at = sentAt.get(String(id));
      if (at !== undefined) times.push(performance.now() - at);
    }
  });
  const ink = encodeLive(new Uint8Array(LIVE_BYTES).fill(7));
  const pieces = Math.ceil((MB * 1e6) / LIVE_BYTES / WRITERS);
  let rss = memory(hub.pid).now;
  await Promise.all(
    writers.map(async (writer, index) => {
      const since = performance.now();
      let drawn = 0;
      for (let piece = 0; piece < pieces; piece++) {
        writer.send(ink);
        for (const page of [...writers, healthy]) page.live.splice(0); // nobody looks at it
        const seconds = (performance.now() - since) / 1000;
        while (drawn < seconds * STROKES_A_SECOND) {
          const id = `${name} ${index} ${drawn++}`;
          sentAt.set(id, performance.now());
          writer.draw(id, new Uint8Array(STROKE_BYTES).fill(drawn));
        }
        rss = Math.max(rss, memory(hub.pid).now);
        await passed(Math.max(0, ((piece + 1) / LIVE_A_SECOND - seconds) * 1000));
      }
      await writer.allSaved();
    }),
  );
  const strokes = [...sentAt.keys()];
  await healthy.until(() => strokes.every((id) => healthy.doc.getMap("strokes").has(id)));
  times.sort((a, b) => a - b);
  return { p95: times[Math.floor(times.length * 0.95)] ?? Number.NaN, rss, strokes };
}

interface Found {
  readonly reading: Passage;
  readonly standing: Passage;
  /** With which code it was sent away, if it was. */
  readonly closed: number | null;
  readonly converged: boolean;
}

function judge({ reading, standing, closed, converged }: Found): string[] {
  const faults: string[] = [];
  const growth = standing.rss - reading.rss;
  if (growth > MOST_MIB)
    faults.push(`slow: a reader that stands still cost ${growth.toFixed(1)} MiB`);
  const change = standing.p95 - reading.p95;
  if (change > Math.max(LEAST_CHANGE_MS, MOST_CHANGE * reading.p95)) {
    faults.push(`slow: the healthy reader's p95 rose by ${change.toFixed(1)} ms`);
  }
  if (closed !== null && closed !== CLOSE.slowReader) faults.push(`slow: closed with ${closed}`);
  if (!converged) faults.push(`slow: the reader had not caught up after ${CATCH_UP_MS} ms`);
  return faults;
}

function passed(ms: number): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, ms));
}
