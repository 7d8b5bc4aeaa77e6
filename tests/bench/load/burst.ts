import { atMost, type Config, gather, passed, STROKE_BYTES } from "./config";
import { cpuSeconds, memory } from "./cost";
import { openLight } from "./pages";
import type { Figures } from "./round";
import { frameOfUpdate, updatesOf } from "./strokes";
import type { Served } from "./targets";
import { createTracker } from "./tracker";

const UPDATES = 30_000; // of all together, at most
const AHEAD = 24; // updates of one sender that not everybody has seen
const LAST_MS = 20_000;

/** What a server can carry: updates made beforehand, each sent as soon as all have seen an earlier one. */
export async function burst(server: Served, config: Config, seconds: number): Promise<Figures> {
  const senders = config.activePerRoom * config.rooms;
  const each = Math.floor(UPDATES / senders);
  const next = new Map<number, () => void>();
  const tracker = createTracker(config.clients / config.rooms - 1, (sender) => {
    lastAt = performance.now();
    next.get(sender)?.();
  });
  let lastAt = 0;
  let over = false;
  const isAnswered = server.target !== "relay";
  const pages = await gather(config, async ({ index, room, isActive }) => {
    const page = await openLight(await server.place(room), isAnswered, tracker.receiver(index));
    if (!isActive) return page;
    const frames = updatesOf(index, each, STROKE_BYTES).map(frameOfUpdate);
    let seq = 0;
    next.set(index, () => {
      const frame = frames[seq];
      if (over || frame === undefined) return;
      tracker.sent({ sender: index, seq: ++seq });
      page.send(frame);
    });
    return page;
  });
  await passed(200);
  const read = () => pages.reduce((sum, page) => sum + page.read(), 0);
  const before = { cpu: cpuSeconds(server.pid), read: read(), at: performance.now() };
  const savedBefore = pages.reduce((sum, page) => sum + page.savedBytes(), 0);
  for (const send of next.values()) for (let ahead = 0; ahead < AHEAD; ahead++) send();
  await atMost(seconds * 1000, () => tracker.seenCount() === each * senders);
  over = true;
  await atMost(LAST_MS, () => tracker.seenCount() === tracker.sentCount());
  await passed(50);
  const seen = tracker.seenCount();
  const result = {
    updatesPerSecond: seen / ((lastAt - before.at) / 1000),
    cpuPer10k: ((cpuSeconds(server.pid) - before.cpu) / seen) * 1e4,
    rssMost: memory(server.pid).most,
    downPerUpdate: (read() - before.read) / seen,
    savedPerUpdate: (pages.reduce((sum, page) => sum + page.savedBytes(), 0) - savedBefore) / seen,
    lost: tracker.sentCount() - seen,
  };
  for (const page of pages) page.close();
  return result;
}
