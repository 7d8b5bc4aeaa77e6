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
const STROKE_BYTES = 222;
const DRAW_EVERY_MS = 1000; // each of them
const LEAVE_EVERY_MS = 100; // somebody, and comes back at once
const MOVE_EVERY_MS = 6000; // everybody in one room, to a new sheet: else the documents would grow, and memory with them
const LOOK_EVERY_MS = 2000;
const LOOKS_A_MINUTE = 30;
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

/**
 * Two hundred people in twenty rooms, who draw, leave and come back, and go on to a new sheet every two
 * minutes; answers whether anything grew. What was drawn over would stay in the documents as what was
 * taken away does, so no sheet is drawn on for long.
 */
export async function soakCrowd(minutes: number): Promise<readonly string[]> {
  await setup();
  const folder = temporaryFolder();
  const health = await freePort();
  const hub = await startHubProcess(folder.path, {
    HEALTH_PORT: `${health}`,
    ADDRESS_SHEETS: "100000",
  });
  try {
    const before = await settledHandles(hub, health);
    const rooms = await Promise.all(Array.from({ length: ROOMS }, () => room(hub.url)));
    const looks = await live(hub, rooms, minutes);
    await Promise.all(rooms.flatMap(({ people }) => people.map(({ leave }) => leave())));
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

type Come = (doc: Y.Doc) => Promise<HubClient>;

/** People on one sheet, and later on another. */
interface Room {
  readonly people: readonly Person[];
  moveOn(): Promise<void>;
}

interface Person {
  draw(): void;
  leave(): Promise<void>;
  leaveAndComeBack(): Promise<void>;
  /** To where the door leads now, with nothing in hand. */
  goThrough(door: Come): Promise<void>;
}

async function room(url: string): Promise<Room> {
  const doorOfNewSheet = async (): Promise<Come> => {
    const { sheet, links } = await createSheet(url);
    const cookie = await enter(url, sheet, links.draw);
    return (doc) => openPage({ url, sheet, cookie, doc, client: doc.clientID });
  };
  const door = await doorOfNewSheet();
  const some = Array.from({ length: PEOPLE / ROOMS }, (_, index) => person(`${index}`, door));
  const people = await Promise.all(some);
  return {
    people,
    async moveOn() {
      const next = await doorOfNewSheet();
      await Promise.all(people.map((one) => one.goThrough(next)));
    },
  };
}

/** Someone who keeps his copy when he leaves, as a page does. He does one thing after another. */
async function person(name: string, first: Come): Promise<Person> {
  let come = first;
  let page = await come(new Y.Doc());
  let drawn = 0;
  let busy = Promise.resolve();
  const next = (act: () => Promise<void>) => {
    busy = busy.then(act);
    return busy;
  };
  const takeSeat = async (doc: Y.Doc) => {
    page.doc.destroy();
    page = await come(doc);
  };
  return {
    draw() {
      if (page.closed !== null) return;
      page.draw(`${name} ${drawn}`, new Uint8Array(STROKE_BYTES).fill(drawn++ % 251));
    },
    leave: () => next(() => page.close()),
    leaveAndComeBack: () =>
      next(async () => {
        await page.close();
        const copy = new Y.Doc();
        Y.applyUpdate(copy, Y.encodeStateAsUpdate(page.doc));
        copy.clientID = page.doc.clientID; // under its old id, as what was drawn offline comes back
        await takeSeat(copy);
      }),
    goThrough: (door) =>
      next(async () => {
        await page.close();
        come = door;
        await takeSeat(new Y.Doc());
      }),
  };
}

async function live(hub: HubProcess, rooms: readonly Room[], minutes: number): Promise<Look[]> {
  const roll = dice(1);
  const since = Date.now();
  const looks: Look[] = [];
  const hours = () => (Date.now() - since) / 3.6e6;
  const look = () => {
    const found = { hours: hours(), rss: memory(hub.pid).now, handles: handlesOf(hub) };
    looks.push(found);
    if (looks.length % LOOKS_A_MINUTE !== 0) return;
    const said = `${(found.hours * 60).toFixed(1)} min, ${found.rss.toFixed(1)} MiB`;
    console.error(`crowd: ${said}, ${found.handles} handles`);
  };
  const people = rooms.flatMap((each) => each.people);
  const acts = new Set<Promise<void>>();
  const act = (work: Promise<void>) => {
    acts.add(work);
    void work.finally(() => acts.delete(work));
  };
  let moves = 0;
  const timers = [
    ...people.map((one) => setInterval(() => one.draw(), DRAW_EVERY_MS)),
    setInterval(() => act(roll.of(people).leaveAndComeBack()), LEAVE_EVERY_MS),
    setInterval(() => act(rooms[moves++ % ROOMS]?.moveOn() ?? Promise.resolve()), MOVE_EVERY_MS),
    setInterval(look, LOOK_EVERY_MS),
  ];
  await new Promise((resolve) => setTimeout(resolve, minutes * 60_000));
  for (const timer of timers) clearInterval(timer);
  await Promise.all(acts);
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
  const { slope, error } = slopeOf(troughsOf(looks));
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

/** The least of every minute: memory rises until it is collected, and how high says little. */
function troughsOf(looks: readonly Look[]): Look[] {
  const minutes = Math.floor(looks.length / LOOKS_A_MINUTE);
  return Array.from({ length: minutes }, (_, minute) => {
    const some = looks.slice(minute * LOOKS_A_MINUTE, (minute + 1) * LOOKS_A_MINUTE);
    return some.reduce((least, each) => (each.rss < least.rss ? each : least));
  });
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
