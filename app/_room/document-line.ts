import { Awareness } from "y-protocols/awareness";
import { WebsocketProvider } from "y-websocket";
import * as Y from "yjs";
import { changesIn } from "../../lib/sheet";
import { CLOSE } from "../../shared/close-code";
import type { DocumentName } from "../../shared/document-name";
import {
  type Hello,
  type Refused,
  readGoing,
  readHello,
  readRefused,
  readRole,
  readSaved,
  readStorage,
  type StorageState,
} from "../../shared/hub-message";
import { MESSAGE, readRelayedLive } from "../../shared/protocol";
import { mayWrite, type Role } from "../../shared/role";
import { comeBackLater } from "./come-back-later";
import { countingSocket } from "./counting-socket";
import type { Drawer } from "./local/drawer";
import type { KeptWork } from "./local/kept-work";
import { createLedger } from "./local/ledger";
import { speakForOneself } from "./speak-for-oneself";
import { createStore, type Store } from "./store";

/** What one document's line to the hub is like, in plain values. */
export interface LineState {
  readonly connected: boolean;
  /** The first exchange is finished: what the hub has is here. */
  readonly synced: boolean;
  /** Update frames sent on this connection, and how many of them the hub has committed. */
  readonly sent: number;
  readonly saved: number;
  /** How many things were done here that are not known to be on the hub's disk. */
  readonly waiting: number;
  /** Some of them have not been handed over on this connection. */
  readonly unsent: boolean;
  /** All of them are on this machine's disk. */
  readonly kept: boolean;
  readonly refused: Refused | null;
  /** The sheet was put back to an older state: this document is void. */
  readonly outdated: boolean;
  readonly storage: StorageState;
  /** Closed for good: the hub's close code, or the page found that it is not let in any more. */
  readonly closed: number | "no-way-in" | null;
  readonly hello: Hello | null;
  readonly role: Role | null;
}

export interface LineOptions {
  /** The awareness client id this page is present under, the same on both lines. */
  readonly client: number;
  /** Whether presence travels on this line; it does on one of the two. */
  readonly present: boolean;
  /** A try to open the line failed. A browser does not tell a page whether it was refused. */
  readonly onUnopened: () => void;
  readonly drawer: Drawer;
  /** Work on this document from an earlier time, in the order it was done in. */
  readonly earlier: Promise<readonly KeptWork[]>;
}

export interface DocumentLine {
  readonly state: Store<LineState>;
  readonly awareness: Awareness;
  send(frame: Uint8Array): void;
  onLive(listener: (sender: number, payload: Uint8Array) => void): () => void;
  /** Earlier work that could not come back as it was: to be done again. Empties the pile. */
  takeAside(): readonly KeptWork[];
  /** What is done within is marked as done again. */
  doingAgain(run: () => void): void;
  /** All work that is not saved, as plain values. The line is closed first. */
  setAside(): readonly KeptWork[];
  /** All work that is not saved, as it is in the drawer, where it stays. The door is shut. */
  takeUnsaved(): readonly KeptWork[];
  /** This browser is not let in any more: the line is not tried again. */
  shutOut(): void;
  close(): void;
}

const FRESH: LineState = {
  connected: false,
  synced: false,
  sent: 0,
  saved: 0,
  waiting: 0,
  unsent: false,
  kept: true,
  refused: null,
  outdated: false,
  storage: "ok",
  closed: null,
  hello: null,
  role: null,
};

/** Where an update comes from that lay on this machine. */
const DRAWER = { from: "drawer" };

/**
 * One document's line: y-websocket's provider, with every update frame counted, so that the page
 * knows what is committed and not merely sent; and with every update laid into the drawer until then.
 */
export function openDocumentLine(
  doc: Y.Doc,
  base: string,
  name: DocumentName,
  { client, present, onUnopened, drawer, earlier }: LineOptions,
): DocumentLine {
  const state = createStore<LineState>(FRESH);
  const patch = (change: Partial<LineState>) => state.set({ ...state.get(), ...change });
  const awareness = new Awareness(doc);
  if (!present) awareness.setLocalState(null);
  const liveListeners = new Set<(sender: number, payload: Uint8Array) => void>();
  const ledger = createLedger();
  let arrivals: readonly KeptWork[] = [];
  let aside: KeptWork[] = [];
  let generation: number | null = null;
  let again = false;
  let isOpen = true;

  const count = (change: Partial<LineState> = {}) => {
    const all = ledger.all();
    const kept = all.every(({ key }) => drawer.isKept(key));
    const before = state.get();
    const now = { ...change, waiting: all.length, unsent: ledger.hasUnsent(), kept };
    const names = Object.keys(now) as (keyof typeof now)[];
    if (names.some((field) => before[field] !== now[field])) patch(now);
  };
  const provider = new WebsocketProvider(base, name, doc, {
    awareness,
    disableBc: true,
    connect: false,
    params: { client: String(client) },
    WebSocketPolyfill: countingSocket((answer) => {
      const sent = state.get().sent + 1;
      if (answer) ledger.answered(sent);
      count({ sent });
    }),
  });
  speakForOneself(provider);
  const callOffReturn = comeBackLater(provider);

  provider.on("status", ({ status }) => {
    if (status === "connecting") return;
    ledger.lineFell();
    count({ connected: status === "connected", synced: false, sent: 0, saved: 0 });
  });
  provider.on("sync", (synced) => patch({ synced }));
  provider.on("closed", ({ code }) =>
    patch(code === CLOSE.otherGeneration ? { outdated: true } : { closed: code }),
  );
  provider.on("connection-error", onUnopened);
  const onUpdate = (update: Uint8Array, origin: unknown, _: Y.Doc, made: Y.Transaction) => {
    if (origin === provider || origin === DRAWER) return;
    const key = drawer.nextKey();
    const changes = changesIn(made);
    const work: KeptWork = {
      ...{ key, document: name, generation: generation ?? 0, update, changes, again, lost: null },
    };
    // The provider heard of it first: where the exchange is under way it has just left.
    ledger.add(work, handsOver() ? state.get().sent : null);
    drawer.keep(work);
    count();
  };
  const handsOver = () =>
    provider.wsconnected && provider.ws?.readyState === WebSocket.OPEN && state.get().sent > 0;
  doc.on("update", onUpdate);
  const stopFollowing = drawer.subscribe(() => count());

  /** Earlier work comes back as it was, under its old client ids, where the document is still the same. */
  const bringBack = ({ generation: now, role }: Hello) => {
    for (const work of arrivals) {
      const asItWas = work.update !== null && work.generation === now && mayWrite(role, name);
      if (asItWas && work.update !== null && applies(doc, work.update)) ledger.add(work, null);
      else aside.push(work);
    }
    arrivals = [];
    count();
  };
  const hear = provider.messageHandlers;
  hear[MESSAGE.hello] = (_reply, frame) => {
    const hello = readHello(frame);
    if (generation !== null && generation !== hello.generation) {
      provider.disconnect(); // before this page's old state is asked for
      patch({ outdated: true });
      return;
    }
    generation = hello.generation;
    provider.params = { ...provider.params, generation: String(generation) }; // for the next line
    bringBack(hello); // before the hub asks what this page has
    patch({ hello, role: hello.role, storage: "ok" });
  };
  hear[MESSAGE.saved] = (_reply, frame) => {
    const saved = readSaved(frame);
    for (const { key } of ledger.saved(saved)) drawer.drop(key);
    count({ saved });
  };
  hear[MESSAGE.refused] = (_reply, frame) => {
    // The first that was refused is what the later ones were built on.
    if (state.get().refused !== null) return;
    const refused = readRefused(frame);
    ledger.refused(refused);
    patch({ refused });
  };
  hear[MESSAGE.storage] = (_reply, frame) => patch({ storage: readStorage(frame).state });
  hear[MESSAGE.role] = (_reply, frame) => patch({ role: readRole(frame) });
  hear[MESSAGE.going] = (_reply, frame) => callOffReturn.between(readGoing(frame));
  for (const quiet of [MESSAGE.beat, MESSAGE.lead, MESSAGE.time]) {
    hear[quiet] = () => undefined; // a sign of life
  }
  hear[MESSAGE.live] = (_reply, frame) => {
    const { client: sender, payload } = readRelayedLive(frame);
    for (const listener of liveListeners) listener(sender, payload);
  };
  void earlier.then((found) => {
    if (!isOpen) return;
    arrivals = found;
    provider.connect();
  });

  return {
    state,
    awareness,
    send(frame) {
      if (provider.ws?.readyState === WebSocket.OPEN) provider.ws.send(frame.slice());
    },
    onLive(listener) {
      liveListeners.add(listener);
      return () => liveListeners.delete(listener);
    },
    takeAside() {
      const taken = aside;
      aside = [];
      return taken;
    },
    doingAgain(run) {
      again = true;
      run();
      again = false;
    },
    setAside() {
      provider.disconnect();
      return [...arrivals, ...aside, ...ledger.setAside()];
    },
    takeUnsaved() {
      const taken = [...arrivals, ...aside, ...ledger.takeAll()];
      arrivals = [];
      aside = [];
      if (taken.length > 0) count();
      return taken;
    },
    shutOut() {
      provider.disconnect();
      patch({ closed: "no-way-in" });
    },
    close() {
      isOpen = false;
      callOffReturn.callOff();
      stopFollowing();
      doc.off("update", onUpdate);
      provider.destroy();
      awareness.destroy();
    },
  };
}

/** Work whose bytes were damaged on this machine is done again from its values. */
function applies(doc: Y.Doc, update: Uint8Array): boolean {
  try {
    Y.decodeUpdate(update); // to its end first: a truncated one would be applied by half
    Y.applyUpdate(doc, update, DRAWER);
    return true;
  } catch {
    return false;
  }
}
