import WebSocket from "ws";
import * as Y from "yjs";
import { type DocumentLine, openDocumentLine } from "../../app/_room/document-line";
import { inkStateOf } from "../../app/_room/ink-state";
import type { Store } from "../../server/store/store";
import type { Dice } from "./dice";
import { sheetWithPeople, startTestHub } from "./hub-under-test";
import { paperDrawer, paperStore } from "./paper-drawer";
import { openTcpProxy, type TcpProxy } from "./tcp-proxy";

/** What goes wrong between a page and its hub. */
export type Trouble = "cut" | "stall" | "half-open" | "half-open, then dead";
export const TROUBLES: readonly Trouble[] = ["cut", "stall", "half-open", "half-open, then dead"];

export interface Partitions {
  /** Strokes drawn while something was wrong. */
  readonly drawn: number;
  /** ms from healing until both pages and the database had everything, the worst of all. */
  readonly slowestMs: number;
  /** How often a page said that all its ink is saved. */
  readonly saidSaved: number;
  readonly faults: readonly string[];
}

export interface PartitionOrder {
  readonly folder: string;
  readonly troubles: readonly Trouble[];
  /** How long each of them lasts. */
  readonly lastsMs: number;
  readonly roll: Dice;
}

const STROKE_EVERY_MS = 30;
const STALLED_SHARE = 0.3;
const STALL_MS = 400;
const GIVEN_UP_MS = 30_000;

/**
 * Two pages draw on, each with the page's own connection to the hub, and one of them through a network that
 * fails it again and again. What is committed is read where the hub's database says so.
 */
export async function partition(order: PartitionOrder): Promise<Partitions> {
  const { folder, troubles, roll } = order;
  const committed = new Y.Doc();
  const hub = await startTestHub(folder, { wrapStore: (store) => watched(store, committed) });
  const proxy = await openTcpProxy(hub.port, roll);
  const { sheet, cookies } = await sheetWithPeople(hub.url);
  const faults: string[] = [];
  const before = globalThis.WebSocket;
  const there = committed.getMap("strokes");
  const open = (port: number, cookie: string, name: string) =>
    openHand({ port, cookie, name, sheet, there, faults });
  const far = open(proxy.port, cookies.draw, "far");
  const near = open(hub.port, cookies.owner, "near");
  const has = (doc: Y.Doc) =>
    [...far.drawn, ...near.drawn].every((id) => doc.getMap("strokes").has(id));
  const equal = () => has(far.doc) && has(near.doc) && has(committed);
  const settled = () => equal() && far.says() === "saved" && near.says() === "saved";
  await until(settled);
  if (!settled()) throw new Error("the pages did not come together at first");
  let slowestMs = 0;
  for (const trouble of troubles) {
    bring(trouble, proxy);
    const hands = [far, near].map((hand) => hand.drawFor(order.lastsMs));
    await Promise.all(hands);
    proxy.heal(trouble === "half-open, then dead" ? "is dead" : "goes on");
    const healed = performance.now();
    await until(settled);
    const took = performance.now() - healed;
    if (!settled()) faults.push(`${trouble}: not together ${GIVEN_UP_MS} ms after it was healed`);
    slowestMs = Math.max(slowestMs, took);
  }
  const [drawn, saidSaved] = [far.drawn.length + near.drawn.length, far.said() + near.said()];
  far.line.close();
  near.line.close();
  await proxy.close();
  await hub.stop();
  globalThis.WebSocket = before;
  return { drawn, slowestMs, saidSaved, faults };
}

function bring(trouble: Trouble, proxy: TcpProxy): void {
  if (trouble === "cut") proxy.cut();
  else if (trouble === "stall") proxy.stall(STALLED_SHARE, STALL_MS);
  else proxy.freeze();
}

/** Knows what the database has taken, at the moment in which it says so. */
function watched(store: Store, committed: Y.Doc): Store {
  return {
    ...store,
    async appendUpdates(batch) {
      const appended = await store.appendUpdates(batch);
      for (const { bytes } of batch.updates) Y.applyUpdate(committed, bytes);
      return appended;
    },
  };
}

interface HandOptions {
  readonly port: number;
  readonly cookie: string;
  readonly name: string;
  readonly sheet: string;
  readonly there: Y.Map<unknown>;
  readonly faults: string[];
}

/** A page's own line to the hub, somebody who draws, and somebody who watches what the page says. */
function openHand({ port, cookie, name, sheet, there, faults }: HandOptions) {
  class BrowserSocket extends WebSocket {
    constructor(address: string) {
      super(address, { headers: { cookie, origin: `http://127.0.0.1:${port}` } });
    }
  }
  const doc = new Y.Doc();
  // The line takes it now, and asks it later what its states are called.
  globalThis.WebSocket = BrowserSocket as unknown as typeof globalThis.WebSocket;
  const line: DocumentLine = openDocumentLine(
    doc,
    `ws://127.0.0.1:${port}/sync/${sheet}`,
    "drawing",
    {
      ...{ client: doc.clientID, present: true, onUnopened: () => undefined },
      ...{ drawer: paperDrawer(paperStore()).drawer, earlier: Promise.resolve([]) },
    },
  );
  const drawn: string[] = [];
  let said = 0;
  const says = () => inkStateOf(line.state.get(), true);
  line.state.subscribe(() => {
    if (says() !== "saved") return;
    said++;
    const missing = drawn.filter((id) => !there.has(id));
    if (missing.length > 0) faults.push(`${name} said saved, and ${missing.length} were not`);
  });
  const draw = () => {
    const id = `${name} ${drawn.length}`;
    drawn.push(id);
    doc.getMap("strokes").set(id, Uint8Array.of(1, 2, 3));
    if (says() === "saved" && !there.has(id)) faults.push(`${name} said saved of ${id} at once`);
  };
  return {
    ...{ doc, line, drawn, says },
    said: () => said,
    async drawFor(ms: number): Promise<void> {
      const since = performance.now();
      while (performance.now() - since < ms) {
        draw();
        await new Promise((resolve) => setTimeout(resolve, STROKE_EVERY_MS));
      }
    },
  };
}

/** Looked at again and again, for what is waited for comes about in several places. */
async function until(holds: () => boolean): Promise<void> {
  const since = performance.now();
  while (!holds() && performance.now() - since < GIVEN_UP_MS) {
    await new Promise((resolve) => setTimeout(resolve, 10));
  }
}
