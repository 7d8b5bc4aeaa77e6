import { setMaxListeners } from "node:events";
import { WebSocket } from "ws";
import { WebsocketProvider } from "y-websocket";
import * as Y from "yjs";
import { comeBackLater } from "../../app/_room/come-back-later";
import { CLOSE } from "../../shared/close-code";
import { readGoing } from "../../shared/hub-message";
import { MESSAGE } from "../../shared/protocol";
import { drawing } from "./drawing-hand";
import { freePort } from "./free-port";
import { openPage } from "./hub-client";
import { type HubProcess, startHubProcess } from "./hub-process";
import { createSheet, enter } from "./hub-under-test";

/** What one SIGTERM under load came to. */
export interface Drain {
  readonly code: number | string | null;
  readonly ms: number;
  /** With which codes the lines were closed, each once. */
  readonly closes: readonly (number | null)[];
  readonly acknowledged: number;
  /** Acknowledged, and not there when the hub was back. */
  readonly missing: number;
  /** In which range pages were told to come back, and after how long each tried to, ms since its line fell. */
  readonly range: { readonly minMs: number; readonly maxMs: number } | null;
  readonly returns: readonly number[];
}

export interface DrainLoad {
  readonly hands: number;
  /** Pages with the connection of the real page, which look on. */
  readonly watchers: number;
  /** Strokes that are acknowledged before the signal comes. */
  readonly strokes: number;
}

/** Draws, ends the hub by SIGTERM, starts it again at the same address, and looks at what came of everybody. */
export async function drainUnderLoad(dataDir: string, load: DrainLoad): Promise<Drain> {
  setMaxListeners(load.watchers + 20, process); // each provider listens for the process's end
  const env = { PORT: `${await freePort()}`, HEALTH_PORT: "off" };
  const hub = await startHubProcess(dataDir, env);
  const { sheet, links } = await createSheet(hub.url);
  const cookie = await enter(hub.url, sheet, links.draw);
  const at = { url: hub.url, sheet, cookie };
  const pages = await Promise.all(Array.from({ length: load.hands }, () => openPage(at)));
  const watchers = Array.from({ length: load.watchers }, () => watch(at));
  await Promise.all(watchers.map(({ synced }) => synced()));
  const pace = { strokeBytes: 222, everyMs: 5 };
  const hands = pages.map((page, index) => drawing(page, `hand ${index}`, pace));
  const drawn = () => hands.flatMap((hand) => hand.acknowledged());
  await pages[0]?.until(() => drawn().length >= load.strokes);
  const since = performance.now();
  const code = await hub.end("SIGTERM");
  const ms = performance.now() - since;
  await Promise.all(pages.map((page) => page.until(() => page.closed !== null)));
  await Promise.all(watchers.map(({ fallen }) => fallen));
  const back: HubProcess = await startHubProcess(dataDir, env);
  await Promise.all(watchers.map(({ synced }) => synced()));
  const after = await openPage(at);
  // Whoever has come back has everything that the hub has, as has whoever comes anew.
  const there = [new Set(after.strokes()), ...watchers.map((watcher) => watcher.strokes())];
  const acknowledged = drawn();
  const missing = acknowledged.filter((id) => !there.every((known) => known.has(id)));
  for (const watcher of watchers) watcher.destroy();
  await after.close();
  await back.end("SIGTERM");
  return {
    closes: [...new Set(pages.map(({ closed }) => closed))],
    ...{ code, ms, acknowledged: acknowledged.length, missing: missing.length },
    range: pages[0]?.going[0] ?? null,
    returns: watchers.flatMap(({ returnedAfter }) => returnedAfter() ?? []),
  };
}

interface At {
  readonly url: string;
  readonly sheet: string;
  readonly cookie: string;
}

/** A page that looks on, through the provider of the real page and what holds that one back. */
function watch({ url, sheet, cookie }: At) {
  let fellAt: number | null = null;
  let returnedAfter: number | null = null;
  let fall = () => {};
  const fallen = new Promise<void>((resolve) => {
    fall = resolve;
  });
  class Line extends WebSocket {
    constructor(address: string) {
      if (fellAt !== null) returnedAfter ??= performance.now() - fellAt;
      super(address, { headers: { cookie } });
      this.on("close", () => {
        fellAt ??= performance.now();
        fall();
      });
    }
  }
  const doc = new Y.Doc();
  const provider = new WebsocketProvider(
    `${url.replace("http", "ws")}/sync/${sheet}`,
    "drawing",
    doc,
    {
      ...{ WebSocketPolyfill: Line as unknown as typeof globalThis.WebSocket, disableBc: true },
      ...{ connect: false, params: { client: `${doc.clientID}` } },
    },
  );
  const later = comeBackLater(provider);
  for (const type of Object.values(MESSAGE)) provider.messageHandlers[type] ??= () => undefined;
  provider.messageHandlers[MESSAGE.going] = (_reply, frame) => later.between(readGoing(frame));
  provider.connect();
  return {
    fallen,
    synced: () =>
      new Promise<void>((resolve) => {
        if (provider.synced) resolve();
        else provider.once("sync", () => resolve());
      }),
    strokes: () => new Set(doc.getMap("strokes").keys()),
    returnedAfter: () => returnedAfter,
    destroy() {
      later.callOff();
      provider.destroy();
    },
  };
}

const LONGEST_MS = 10_000; // what a process manager usually grants
const LATE_MS = 500; // of a timer on a busy machine
const PARTS = 5; // of the announced range

/** What of it was not as promised. */
export function faultsOf(drain: Drain, { watchers }: DrainLoad): string[] {
  const faults: string[] = [];
  const expect = (holds: boolean, otherwise: string) => {
    if (!holds) faults.push(otherwise);
  };
  const { code, ms, closes, missing, returns, range } = drain;
  expect(code === 0, `it ended with ${code}`);
  expect(ms <= LONGEST_MS, `it took ${ms.toFixed(0)} ms`);
  expect(`${closes}` === `${CLOSE.going}`, `lines were closed with ${closes}`);
  expect(missing === 0, `${missing} acknowledged strokes are missing`);
  expect(returns.length === watchers, `${returns.length} of ${watchers} came back`);
  if (range === null) return [...faults, "nobody was told when to come back"];
  const { minMs, maxMs } = range;
  const early = returns.filter((after) => after < minMs - 1);
  const late = returns.filter((after) => after > maxMs + LATE_MS);
  expect(
    early.length + late.length === 0,
    `${early.length} came too early, ${late.length} too late`,
  );
  const parts = returns.map((after) => Math.floor(((after - minMs) / (maxMs - minMs)) * PARTS));
  const most = Math.max(...parts.map((part) => parts.filter((other) => other === part).length));
  const share = `${most} of ${watchers} came back in the same fifth of the range`;
  // By chance, 24 over five parts put more than 16 into one less than once in a million times.
  expect(most <= (2 / 3) * watchers, share);
  return faults;
}
