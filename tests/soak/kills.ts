import { dice } from "../support/dice";
import { drawing } from "../support/drawing-hand";
import { freePort } from "../support/free-port";
import { type HubClient, openPage } from "../support/hub-client";
import { type HubProcess, startHubProcess } from "../support/hub-process";
import { createSheet, enter, temporaryFolder } from "../support/hub-under-test";
import { setup } from "../support/programs";

const HANDS = 4;
const STROKE_BYTES = 222;
const EVERY_MS = 10; // a hundred strokes a second of each hand, unless the hub is slower
const FIRST_MS = 200; // after everybody has come in
const LAST_MS = 15_000;
const KILLS_A_SHEET = 5; // or the sheet becomes larger than any that people draw
const ASK_MS = 10;

interface Kill {
  readonly afterMs: number;
  readonly acknowledged: number;
  readonly acknowledgedMissing: number;
  readonly seen: number;
  readonly seenMissing: number;
  /** From starting it again until its door for watchers says that it is ready. */
  readonly readyMs: number;
}

/** Kills a hub again and again while four people draw, and answers what was missing afterwards. */
export async function soakKills(kills: number): Promise<readonly string[]> {
  const seed = Number(process.env.SEED ?? Date.now() % 1e6);
  const roll = dice(seed);
  const folder = temporaryFolder();
  const done: Kill[] = [];
  await setup(); // or each start would take a few seconds to read the source
  console.error(`kills (SEED=${seed})`);
  console.error("kill  after ms  acknowledged  missing   seen  missing  ready ms");
  try {
    let { hub } = await start(folder.path);
    for (let left = kills; left > 0; left -= KILLS_A_SHEET) {
      hub = await killOnOneSheet(hub, Math.min(left, KILLS_A_SHEET));
    }
    await hub.end("SIGTERM");
  } finally {
    folder.remove();
  }
  return judge(done, seed);

  async function killOnOneSheet(first: HubProcess, count: number): Promise<HubProcess> {
    let hub = first;
    const { sheet, links } = await createSheet(hub.url);
    const cookie = await enter(hub.url, sheet, links.draw);
    const acknowledged = new Set<string>();
    const seen = new Set<string>();
    for (let kill = 0; kill < count; kill++) {
      const come = () => openPage({ url: hub.url, sheet, cookie });
      const pages: HubClient[] = [];
      for (let hand = 0; hand < HANDS; hand++) pages.push(await come());
      const pace = { strokeBytes: STROKE_BYTES, everyMs: EVERY_MS };
      const hands = pages.map((page, hand) => drawing(page, `${done.length} ${hand}`, pace));
      // More often soon than late: what is worst takes place while everything is still warm.
      const share = roll.below(1000) / 1000;
      const afterMs = Math.round(FIRST_MS + (LAST_MS - FIRST_MS) * share ** 3);
      await new Promise((resolve) => setTimeout(resolve, afterMs));
      await hub.end("SIGKILL");
      await Promise.all(pages.map((page) => page.until(() => page.closed !== null)));
      for (const hand of hands) {
        for (const id of hand.acknowledged()) acknowledged.add(id);
        for (const id of hand.seen) seen.add(id);
      }
      const again = await start(folder.path);
      hub = again.hub;
      const after = await come();
      const there = new Set(after.strokes());
      const missing = (of: ReadonlySet<string>) => [...of].filter((id) => !there.has(id)).length;
      const found = {
        ...{ afterMs, readyMs: again.readyMs, acknowledged: acknowledged.size, seen: seen.size },
        ...{ acknowledgedMissing: missing(acknowledged), seenMissing: missing(seen) },
      };
      done.push(found);
      tell(done.length, found);
      await after.close();
    }
    return hub;
  }
}

async function start(dataDir: string): Promise<{ hub: HubProcess; readyMs: number }> {
  const port = await freePort();
  const since = performance.now();
  const hub = await startHubProcess(dataDir, { HEALTH_PORT: `${port}` });
  while (!(await fetch(`http://127.0.0.1:${port}/readyz`)).ok) {
    await new Promise((resolve) => setTimeout(resolve, ASK_MS));
  }
  return { hub, readyMs: performance.now() - since };
}

function tell(kill: number, found: Kill): void {
  const cells = [
    `${kill}`.padStart(4),
    `${found.afterMs}`.padStart(9),
    `${found.acknowledged}`.padStart(13),
    `${found.acknowledgedMissing}`.padStart(8),
    `${found.seen}`.padStart(6),
    `${found.seenMissing}`.padStart(8),
    found.readyMs.toFixed(0).padStart(9),
  ];
  console.error(cells.join(" "));
}

function judge(done: readonly Kill[], seed: number): string[] {
  const sum = (of: (kill: Kill) => number) => done.reduce((all, kill) => all + of(kill), 0);
  const ready = done.map(({ readyMs }) => readyMs).sort((a, b) => a - b);
  const [lostSaved, lostSeen] = [sum((k) => k.acknowledgedMissing), sum((k) => k.seenMissing)];
  console.error(
    `${done.length} kills: ${lostSaved} acknowledged and ${lostSeen} seen strokes missing; ready after ${ready[done.length >> 1]?.toFixed(0)} ms (median), ${ready.at(-1)?.toFixed(0)} ms (longest)`,
  );
  const faults: string[] = [];
  if (lostSaved > 0) faults.push(`kills (SEED=${seed}): ${lostSaved} acknowledged and missing`);
  if (lostSeen > 0) faults.push(`kills (SEED=${seed}): ${lostSeen} seen by a peer and missing`);
  return faults;
}
