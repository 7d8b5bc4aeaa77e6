import { readdirSync } from "node:fs";
import * as Y from "yjs";
import { memory } from "../bench/load/cost";
import { dice } from "../support/dice";
import { freePort } from "../support/free-port";
import { type HubClient, openPage } from "../support/hub-client";
import { type HubProcess, startHubProcess } from "../support/hub-process";
import { createSheet, enter, temporaryFolder } from "../support/hub-under-test";
import { setup } from "../support/programs";

const PEOPLE = 200;
const ROOMS = 20;
const STROKES_EACH = 20; // drawn over and over, so that the documents stay as large as they are
const STROKE_BYTES = 222;
const DRAW_EVERY_MS = 1000; // each of them
const LEAVE_EVERY_MS = 100; // somebody, and comes back at once
const LOOK_EVERY_MS = 2000;
const WARM_UP = 1 / 3; // of the time
const MIB_AN_HOUR = 1; // source: the hub's design, measured
const SETTLE_MS = 5000;
const LET_GO_MS = 90_000; // the thread that compacts has its own, and is kept for a minute
const SPARE = 3; // handles; our own choice

interface Look {
  readonly hours: number;
  readonly rss: number;
  readonly handles: number;
}

/** Two hundred people in twenty rooms, who draw, leave and come back; answers whether anything grew. */
export async function soakCrowd(minutes: number): Promise<readonly string[]> {
  await setup();
  const folder = temporaryFolder();
  const health = await freePort();
  const hub = await startHubProcess(folder.path, { HEALTH_PORT: `${health}` });
  try {
    const before = await settledHandles(hub, health);
    const people = await comeIn(hub.url);
    const looks = await live(hub, people, minutes);
    await Promise.all(people.map(({ leave }) => leave()));
    let after = await settledHandles(hub, health);
    for (let wait = 0; wait < LET_GO_MS && after > before + SPARE; wait += SETTLE_MS) {
      after = await settledHandles(hub, health);
    }
    return judge(looks, { before, after });
  } finally {
    await hub.end("SIGTERM");
    folder.remove();
  }
}

interface Person {
  draw(): void;
  leave(): Promise<void>;
  leaveAndComeBack(): Promise<void>;
}

async function comeIn(url: string): Promise<Person[]> {
  const people: Person[] = [];
  for (let room = 0; room < ROOMS; room++) {
    const { sheet, links } = await createSheet(url);
    const cookie = await enter(url, sheet, links.draw);
    const come = (doc: Y.Doc) => openPage({ url, sheet, cookie, doc, client: doc.clientID });
    const some = Array.from({ length: PEOPLE / ROOMS }, (_, index) => person(`${index}`, come));
    people.push(...(await Promise.all(some)));
  }
  return people;
}

/** Someone who keeps his copy when he leaves, as a page does. */
async function person(name: string, come: (doc: Y.Doc) => Promise<HubClient>): Promise<Person> {
  let page = await come(new Y.Doc());
  let drawn = 0;
  return {
    draw() {
      if (page.closed !== null) return;
      const bytes = new Uint8Array(STROKE_BYTES).fill(drawn % 251);
      page.draw(`${name} ${drawn++ % STROKES_EACH}`, bytes);
    },
    leave: () => page.close(),
    async leaveAndComeBack() {
      await page.close();
      const copy = new Y.Doc();
      Y.applyUpdate(copy, Y.encodeStateAsUpdate(page.doc));
      copy.clientID = page.doc.clientID; // under its old id, as what was drawn offline comes back
      page.doc.destroy();
      page = await come(copy);
    },
  };
}

async function live(hub: HubProcess, people: readonly Person[], minutes: number): Promise<Look[]> {
  const roll = dice(1);
  const since = Date.now();
  const looks: Look[] = [];
  const away = new Set<Person>();
  const hours = () => (Date.now() - since) / 3.6e6;
  const look = () => {
    const found = { hours: hours(), rss: memory(hub.pid).now, handles: handlesOf(hub) };
    looks.push(found);
    if (looks.length % 15 === 0) {
      console.error(
        `crowd: ${(found.hours * 60).toFixed(1)} min, ${found.rss.toFixed(1)} MiB, ${found.handles} handles`,
      );
    }
  };
  const swap = async () => {
    const one = roll.of(people);
    if (away.has(one)) return;
    away.add(one);
    await one.leaveAndComeBack();
    away.delete(one);
  };
  const timers = [
    ...people.map((one) => setInterval(() => one.draw(), DRAW_EVERY_MS)),
    setInterval(() => void swap(), LEAVE_EVERY_MS),
    setInterval(look, LOOK_EVERY_MS),
  ];
  await new Promise((resolve) => setTimeout(resolve, minutes * 60_000));
  for (const timer of timers) clearInterval(timer);
  while (away.size > 0) await new Promise((resolve) => setTimeout(resolve, 50));
  return looks.filter((each) => each.hours * 60 > minutes * WARM_UP);
}

/** Open files and sockets of the process; empty where the kernel does not say. */
function handlesOf({ pid }: HubProcess): number {
  try {
    return readdirSync(`/proc/${pid}/fd`).length;
  } catch {
    return 0;
  }
}

/** Once nobody is connected any more, and connections for single requests have been let go. */
async function settledHandles(hub: HubProcess, health: number): Promise<number> {
  const sockets = async () => {
    const text = await (await fetch(`http://127.0.0.1:${health}/metrics`)).text();
    const found = [...text.matchAll(/^heelstrip_sockets\{.*\} (\d+)$/gm)];
    return found.reduce((sum, [, count]) => sum + Number(count), 0);
  };
  while ((await sockets()) > 0) await new Promise((resolve) => setTimeout(resolve, 100));
  await new Promise((resolve) => setTimeout(resolve, SETTLE_MS));
  return handlesOf(hub);
}

function judge(
  looks: readonly Look[],
  { before, after }: { readonly before: number; readonly after: number },
): string[] {
  const { slope, error } = slopeOf(looks);
  const handles = looks.map((look) => look.handles);
  const mean = looks.reduce((sum, { rss }) => sum + rss, 0) / looks.length;
  console.error(
    `crowd: ${mean.toFixed(1)} MiB, ${slope.toFixed(1)} ± ${(2 * error).toFixed(1)} MiB an hour; handles ${Math.min(...handles)}–${Math.max(...handles)} while ${PEOPLE} are there, ${before} before, ${after} after`,
  );
  const faults: string[] = [];
  // A short run cannot tell a megabyte an hour from none: what is sure to be more is a fault.
  if (slope - 2 * error > MIB_AN_HOUR) {
    faults.push(
      `crowd: memory grows by ${slope.toFixed(1)} ± ${(2 * error).toFixed(1)} MiB an hour`,
    );
  }
  const third = Math.ceil(handles.length / 3);
  const least = (some: readonly number[]) => Math.min(...some);
  if (least(handles.slice(-third)) > least(handles.slice(0, third)) + SPARE)
    faults.push(`crowd: handles grow from ${least(handles)} to ${least(handles.slice(-third))}`);
  if (after > before + SPARE) faults.push(`crowd: ${before} handles before, ${after} after`);
  return faults;
}

/** Least squares, with the standard error of the slope. MiB an hour. */
function slopeOf(looks: readonly Look[]): { readonly slope: number; readonly error: number } {
  const mean = (of: (look: Look) => number) =>
    looks.reduce((sum, look) => sum + of(look), 0) / looks.length;
  const [x, y] = [mean(({ hours }) => hours), mean(({ rss }) => rss)];
  const spread = mean(({ hours }) => (hours - x) ** 2);
  const slope = mean(({ hours, rss }) => (hours - x) * (rss - y)) / spread;
  const left = mean(({ hours, rss }) => (rss - y - slope * (hours - x)) ** 2);
  return { slope, error: Math.sqrt(left / spread / Math.max(1, looks.length - 2)) };
}
