import { join } from "node:path";
import { sql } from "kysely";
import { openSqlite } from "../../server/store/sqlite";
import { HUB_LIMITS } from "../../shared/limits";
import { type HubClient, openPage } from "../support/hub-client";
import { type HubProcess, startHubProcess } from "../support/hub-process";
import { createSheet, enter, temporaryFolder } from "../support/hub-under-test";
import { setup } from "../support/programs";

const HELD_MS = 10_000;
const TOLD_MS = 1000;
const RECOVERED_MS = 2000; // the longest pause before a commit is tried again, and what waits is a batch
const HANDS = 4;
const EACH_BYTES = 12 * 1024 * 1024; // within what a page may send at once; together above the limit
const STROKE_BYTES = 256 * 1024;
const ASK_MS = 250;
const MIB = 1024 * 1024;

/** Holds the database's write lock while four people send more than the hub will have waiting. */
export async function soakStuck(rounds: number): Promise<readonly string[]> {
  const folder = temporaryFolder();
  const faults: string[] = [];
  await setup();
  const hub = await startHubProcess(folder.path);
  try {
    for (let round = 1; round <= rounds; round++) faults.push(...(await hold(hub, folder.path)));
    if ((await hub.end("SIGTERM")) !== 0) faults.push("the hub did not end well");
  } finally {
    await hub.end("SIGKILL");
    folder.remove();
  }
  return faults.map((fault) => `stuck: ${fault}`);
}

async function hold(hub: HubProcess, folder: string): Promise<string[]> {
  const { sheet, links } = await createSheet(hub.url);
  const pages: HubClient[] = [];
  for (let hand = 0; hand < HANDS; hand++) {
    const cookie = await enter(hub.url, sheet, links.draw);
    pages.push(await openPage({ url: hub.url, sheet, cookie }));
  }
  const cookie = await enter(hub.url, sheet, links.view);
  const before = await figures(hub);
  const holder = openSqlite(join(folder, "heelstrip.db"));
  await sql`begin immediate`.execute(holder);
  const held = performance.now();
  pages[0]?.draw("the first");
  await Promise.all(pages.map((page) => page.until(() => page.storage.length > 0)));
  const toldMs = performance.now() - held;
  // Only then: what four pages encode and send would keep this process from hearing.
  for (const [hand, page] of pages.entries()) pour(page, hand);
  let most = { backlog: 0, resident: 0 };
  while (performance.now() - held < HELD_MS) {
    await new Promise((resolve) => setTimeout(resolve, ASK_MS));
    const { backlog, resident } = await figures(hub);
    most = {
      backlog: Math.max(most.backlog, backlog),
      resident: Math.max(most.resident, resident - before.resident),
    };
  }
  const early = pages.some((page) => page.saved > 1); // the first frame is the answer to the hub's question
  await sql`rollback`.execute(holder);
  await holder.destroy();
  const freed = performance.now();
  await pages[0]?.until(() => (pages[0]?.saved ?? 0) > 1);
  const recoveredMs = performance.now() - freed;
  await Promise.all(pages.map((page) => page.allSaved()));
  const allMs = performance.now() - freed;
  const after = await openPage({ url: hub.url, sheet, cookie });
  const missing = 1 + HANDS * (EACH_BYTES / STROKE_BYTES) - after.strokes().length;
  for (const page of [...pages, after]) await page.close();
  console.error(
    `stuck: told after ${toldMs.toFixed(0)} ms, ${(most.backlog / MIB).toFixed(1)} MiB waiting at most, ${(most.resident / MIB).toFixed(0)} MiB more memory, going on after ${recoveredMs.toFixed(0)} ms, all saved after ${allMs.toFixed(0)} ms, ${missing} missing`,
  );
  const limit = HUB_LIMITS.backlogBytes + HANDS * STROKE_BYTES; // one frame of each may be on its way
  return [
    ...(toldMs < TOLD_MS ? [] : [`told after ${toldMs} ms`]),
    ...(most.backlog < limit ? [] : [`${most.backlog} bytes waited`]),
    ...(recoveredMs < RECOVERED_MS ? [] : [`went on ${recoveredMs} ms after it could`]),
    ...(early ? ["something was called saved while the database was held"] : []),
    ...(missing === 0 ? [] : [`${missing} strokes are missing`]),
  ];
}

function pour(page: HubClient, hand: number): void {
  for (let stroke = 0; stroke < EACH_BYTES / STROKE_BYTES; stroke++) {
    page.draw(`${hand} ${stroke}`, new Uint8Array(STROKE_BYTES).fill(stroke));
  }
}

async function figures(hub: HubProcess): Promise<{ backlog: number; resident: number }> {
  const port = /"healthPort":(\d+)/.exec(hub.errors())?.[1];
  const metrics = await (await fetch(`http://127.0.0.1:${port}/metrics`)).text();
  const read = (name: string) =>
    Number(new RegExp(`^heelstrip_${name} (\\S+)$`, "m").exec(metrics)?.[1]);
  return { backlog: read("backlog_bytes"), resident: read("resident_memory_bytes") };
}
