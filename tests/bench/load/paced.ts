import type { HubClient } from "../../support/hub-client";
import { atMost, type Config, gather, passed, STROKE_BYTES } from "./config";
import { cpuSeconds, memory } from "./cost";
import { bytesRead, openWhole, watchStrokes } from "./pages";
import type { Figures } from "./round";
import { idOf, inkOf } from "./strokes";
import type { Served } from "./targets";
import { createTracker, percentile } from "./tracker";

const STROKES_A_SECOND = 10;
const MOVES_A_SECOND = 30; // of the pointer
const LAST_MS = 20_000; // for the last strokes to arrive, on a busy machine

/** People draw and move their pointers at a human pace, and every page applies everything. */
export async function paced(server: Served, config: Config, seconds: number): Promise<Figures> {
  const tracker = createTracker(config.clients / config.rooms - 1);
  const pages = await gather(config, async ({ index, room, isActive }) => {
    const page = await openWhole(await server.place(room), server.target !== "relay");
    watchStrokes(page, tracker.receiver(index));
    return { page, index, isActive };
  });
  await passed(200);
  const read = () => pages.reduce((sum, { page }) => sum + bytesRead(page.socket), 0);
  const before = { cpu: cpuSeconds(server.pid), read: read(), at: performance.now() };
  await Promise.all(
    pages.flatMap(({ page, index, isActive }) => {
      if (!isActive) return [];
      return [
        often(STROKES_A_SECOND, seconds, (count) => {
          const mark = { sender: index, seq: count };
          const ink = inkOf(mark, STROKE_BYTES);
          tracker.sent(mark);
          page.draw(idOf(mark), ink);
        }),
        often(MOVES_A_SECOND, seconds, (count) => move(page, index, count)),
      ];
    }),
  );
  await atMost(LAST_MS, () => tracker.seenCount() === tracker.sentCount());
  const wall = (performance.now() - before.at) / 1000;
  const times = tracker.times();
  const result = {
    p50: percentile(times, 0.5),
    p95: percentile(times, 0.95),
    cpu: cpuSeconds(server.pid) - before.cpu,
    rss: memory(server.pid).now,
    downKiBPerSecond: (read() - before.read) / 1024 / wall,
    lost: tracker.sentCount() - tracker.seenCount(),
  };
  for (const { page } of pages) page.socket.terminate();
  return result;
}

function move(page: HubClient, who: number, clock: number): void {
  const somewhere = (most: number) => Math.round(Math.random() * most);
  page.say({ user: `user ${who}`, x: somewhere(4000), y: somewhere(3000) }, clock);
}

/** Begins at a chance moment, so that not all do it in the same; what is late is made up for at once. */
function often(perSecond: number, seconds: number, act: (count: number) => void): Promise<void> {
  const since = performance.now();
  const every = 1000 / perSecond;
  let due = Math.random() * every;
  let count = 0;
  return new Promise((resolve) => {
    const look = () => {
      const now = performance.now() - since;
      if (now > seconds * 1000) return resolve();
      for (; due <= now; due += every) act(++count);
      setTimeout(look, Math.max(1, due - now));
    };
    look();
  });
}
