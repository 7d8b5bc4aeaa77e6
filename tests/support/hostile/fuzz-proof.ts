import { createHash } from "node:crypto";
import { join } from "node:path";
import * as Y from "yjs";
import { openKyselyStore } from "../../../server/store/kysely-store";
import { SQLITE } from "../../../server/store/schema";
import { openSqlite } from "../../../server/store/sqlite";
import { HUB_LIMITS, STORE_LIMITS } from "../../../shared/limits";
import { type HubClient, openPage } from "../hub-client";
import { type HubProcess, startHubProcess } from "../hub-process";
import { ask, createSheet, enter } from "../hub-under-test";
import { type Bombarded, bombard } from "./bombard";
import { circular } from "./hostile-kinds";
import { openStranger } from "./stranger";

export interface FuzzProof extends Bombarded {
  /** How many strokes the honest pair drew meanwhile. */
  readonly strokes: number;
  /** Bytes of log. */
  readonly logged: number;
  /** MiB of the process: when the first fifth was through, and at the end. */
  readonly memory: readonly [number, number];
  readonly strikes: Strikes;
}

export interface Strikes {
  readonly sent: number;
  /** What lies in quarantine, and how many devices had sent it. */
  readonly aside: number;
  readonly devices: number;
}

export interface FuzzOrder {
  readonly folder: string;
  readonly frames: number;
  readonly seed: number;
  /** Devices that each send what breaks a document, until they are shut out. */
  readonly breakers: number;
}

const PATIENCE_MS = 5000; // for an honest stroke to arrive; on a quiet machine it takes a hundredth
const STRANGERS = 4;
const MIB = 1024 * 1024;

/** A hub in a process of its own, an honest pair that draws on, and strangers that send what they can think of. */
export async function proveFuzz(order: FuzzOrder): Promise<FuzzProof> {
  const { folder, frames, seed } = order;
  let hub = await start(folder);
  const { sheet, links } = await createSheet(hub.url);
  const open = async () =>
    openPage({ url: hub.url, sheet, cookie: await enter(hub.url, sheet, links.draw) });
  const pair = await honestPair(open);
  const cookies = await Promise.all(
    Array.from({ length: STRANGERS }, () => enter(hub.url, sheet, links.draw)),
  );
  const memory: number[] = [];
  let looks = 0;
  const done = await bombard({
    ...{ url: hub.url, sheet, cookies, frames, seed, victim: pair.victim },
    async look() {
      memory.push(await residentMib(hub));
      looks++;
      return pair.drawAndSee();
    },
  });
  const faults = [...done.faults];
  const strikes = await sendBreakers(hub, order, faults);
  const before = await open();
  faults.push(...differences("the pair and a newcomer", pair.pages[0].doc, before.doc));
  faults.push(...differences("the two of the pair", pair.pages[0].doc, pair.pages[1].doc));
  const logged = Buffer.byteLength(hub.errors());
  await hub.end("SIGTERM");
  hub = await start(folder);
  const after = await open();
  faults.push(...differences("before and after a restart", before.doc, after.doc));
  const missing = pair.drawn().filter((id) => !after.doc.getMap("strokes").has(id));
  if (missing.length > 0) faults.push(`${missing.length} honest strokes are missing`);
  if ((await hub.end("SIGTERM")) !== 0) faults.push("the hub did not end well");
  const [early = 0, late = 0] = [memory[Math.floor(memory.length / 5)], memory.at(-1)];
  return { ...done, faults, logged, strikes, memory: [early, late], strokes: looks };
}

async function start(folder: string) {
  const hub = await startHubProcess(folder, { ADDRESS_REQUESTS: "1000000" });
  return { ...hub, health: () => /"healthPort":(\d+)/.exec(hub.errors())?.[1] ?? "" };
}

async function residentMib(hub: Awaited<ReturnType<typeof start>>): Promise<number> {
  const metrics = await (await fetch(`http://127.0.0.1:${hub.health()}/metrics`)).text();
  return Number(/^heelstrip_resident_memory_bytes (\S+)$/m.exec(metrics)?.[1]) / MIB;
}

/** Two pages on two devices: each sees what the other draws, whatever else goes on. */
async function honestPair(open: () => Promise<HubClient>) {
  const pages = [await open(), await open()] as const;
  const drawn: string[] = [];
  const [anna, ben] = pages;
  const drawAndSee = async (): Promise<string | null> => {
    const id = `honest ${drawn.length}`;
    const [from, to] = drawn.length % 2 === 0 ? [anna, ben] : [ben, anna];
    drawn.push(id);
    const seen = to.until(() => to.doc.getMap("strokes").has(id) || to.closed !== null);
    from.draw(id);
    const late = new Promise<"late">((resolve) => {
      setTimeout(resolve, PATIENCE_MS, "late").unref();
    });
    const both = Promise.all([seen, from.allSaved()]);
    if ((await Promise.race([both, late])) === "late") return "an honest stroke did not arrive";
    if (anna.closed !== null || ben.closed !== null) return "the honest pair was closed";
    return anna.refused.length + ben.refused.length > 0 ? "the honest pair was refused" : null;
  };
  const first = await drawAndSee();
  if (first !== null) throw new Error(first);
  const { client } = anna;
  return {
    ...{ pages, drawAndSee },
    drawn: () => drawn,
    victim: () => ({ client: anna.doc.clientID, clock: Y.getState(anna.doc.store, client) }),
  };
}

/** On a sheet of its own, for whoever is in the room is sent away to a fresh one each time. */
async function sendBreakers(hub: HubProcess, order: FuzzOrder, faults: string[]): Promise<Strikes> {
  const { sheet, links } = await createSheet(hub.url);
  const { url } = hub;
  const cookie = await enter(url, sheet, links.owner);
  let ben = await openPage({ url, sheet, cookie });
  ben.draw("sound");
  await ben.allSaved();
  let sent = 0;
  for (let breaker = 1; breaker <= order.breakers; breaker++) {
    const theirs = await enter(url, sheet, links.draw);
    for (let strike = 1; strike <= HUB_LIMITS.strikes; strike++) {
      const client = breaker * 100 + strike * 10;
      const eve = await openStranger({ url, sheet, cookie: theirs, client });
      eve.send(circular(client + 1, client + 2));
      sent++;
      await eve.done();
      await ben.until(() => ben.closed !== null);
      ben = await openPage({ url, sheet, cookie, doc: ben.doc });
      if (ben.refused.length > 0) faults.push("an honest page was refused after a break");
    }
    const out = await openStranger({ url, sheet, cookie: theirs, client: 1 });
    await out.done();
    if (out.closed() !== 4423) faults.push(`a breaker was closed with ${out.closed()}`);
  }
  ben.draw("goes on");
  await ben.allSaved();
  await ben.close();
  const lies = await quarantined(order.folder, sheet);
  const due = Math.min(sent, STORE_LIMITS.quarantined);
  if (lies.aside !== due) faults.push(`${lies.aside} lie in quarantine, and should be ${due}`);
  if ((await ask(url, "/api/nothing")).status !== 404) faults.push("the hub does not answer");
  return { sent, ...lies };
}

async function quarantined(folder: string, sheet: string) {
  const store = await openKyselyStore(openSqlite(join(folder, "heelstrip.db")), SQLITE);
  const stored = await store.loadDocument(sheet as never, "drawing");
  const list = await store.listQuarantine(stored?.documentId ?? 0);
  await store.close();
  const devices = new Set(list.map(({ device }) => Buffer.from(device ?? []).toString("hex")));
  return { aside: list.length, devices: devices.size };
}

/** Equal state vectors are not enough: two documents can have them and differ for ever. */
function differences(between: string, one: Y.Doc, two: Y.Doc): string[] {
  const same =
    Y.equalSnapshots(Y.snapshot(one), Y.snapshot(two)) && contentOf(one) === contentOf(two);
  return same ? [] : [`${between} differ`];
}

function contentOf(doc: Y.Doc): string {
  const entries = [...doc.getMap("strokes").entries()].sort(([a], [b]) => (a < b ? -1 : 1));
  const plainly = entries.map(([key, value]) => [
    key,
    value instanceof Uint8Array ? [...value] : value,
  ]);
  return createHash("sha256").update(JSON.stringify(plainly)).digest("hex");
}
