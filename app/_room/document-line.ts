import { Awareness } from "y-protocols/awareness";
import { WebsocketProvider } from "y-websocket";
import type * as Y from "yjs";
import type { DocumentName } from "../../shared/document-name";
import {
  type Hello,
  type Refused,
  readHello,
  readRefused,
  readRole,
  readSaved,
  readStorage,
  type StorageState,
} from "../../shared/hub-message";
import { MESSAGE, readRelayedLive } from "../../shared/protocol";
import type { Role } from "../../shared/role";
import { countingSocket } from "./counting-socket";
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
  /** Ink was drawn while no line was open, and has not been handed over yet. */
  readonly unsent: boolean;
  readonly refused: Refused | null;
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
}

export interface DocumentLine {
  readonly state: Store<LineState>;
  readonly awareness: Awareness;
  send(frame: Uint8Array): void;
  onLive(listener: (sender: number, payload: Uint8Array) => void): () => void;
  /** This browser is not let in any more: the line is not tried again. */
  shutOut(): void;
  close(): void;
}

const FRESH: LineState = {
  connected: false,
  synced: false,
  sent: 0,
  saved: 0,
  unsent: false,
  refused: null,
  storage: "ok",
  closed: null,
  hello: null,
  role: null,
};

/**
 * One document's line: y-websocket's provider, with every update frame counted, so that the page
 * knows what is committed and not merely sent.
 */
export function openDocumentLine(
  doc: Y.Doc,
  base: string,
  name: DocumentName,
  { client, present, onUnopened }: LineOptions,
): DocumentLine {
  const state = createStore<LineState>(FRESH);
  const patch = (change: Partial<LineState>) => state.set({ ...state.get(), ...change });
  const awareness = new Awareness(doc);
  if (!present) awareness.setLocalState(null);
  const liveListeners = new Set<(sender: number, payload: Uint8Array) => void>();

  const provider = new WebsocketProvider(base, name, doc, {
    awareness,
    disableBc: true,
    connect: false,
    params: { client: String(client) },
    WebSocketPolyfill: countingSocket({
      onSent: (answer) =>
        patch({ sent: state.get().sent + 1, unsent: !answer && state.get().unsent }),
      onHeldBack: () => patch({ unsent: true }),
    }),
  });
  speakForOneself(provider);

  provider.on("status", ({ status }) => {
    if (status === "connecting") return;
    patch({ connected: status === "connected", synced: false, sent: 0, saved: 0 });
  });
  provider.on("sync", (synced) => patch({ synced }));
  provider.on("closed", ({ code }) => patch({ closed: code }));
  provider.on("connection-error", onUnopened);
  provider.on("connection-close", (_event, who) => {
    // Frames on their way to a line that fell are not known to be saved.
    const { sent, saved } = state.get();
    if (who.wsconnected && sent > saved) patch({ unsent: true });
  });
  const onUpdate = (_update: Uint8Array, origin: unknown) => {
    if (origin !== provider && !provider.wsconnected) patch({ unsent: true });
  };
  doc.on("update", onUpdate);

  const hear = provider.messageHandlers;
  hear[MESSAGE.hello] = (_reply, frame) => {
    const hello = readHello(frame);
    patch({ hello, role: hello.role, storage: "ok" });
  };
  hear[MESSAGE.saved] = (_reply, frame) => patch({ saved: readSaved(frame) });
  hear[MESSAGE.refused] = (_reply, frame) => patch({ refused: readRefused(frame) });
  hear[MESSAGE.storage] = (_reply, frame) => patch({ storage: readStorage(frame).state });
  hear[MESSAGE.role] = (_reply, frame) => patch({ role: readRole(frame) });
  for (const quiet of [MESSAGE.beat, MESSAGE.going, MESSAGE.lead, MESSAGE.time]) {
    hear[quiet] = () => undefined; // a sign of life; the provider comes back by itself
  }
  hear[MESSAGE.live] = (_reply, frame) => {
    const { client: sender, payload } = readRelayedLive(frame);
    for (const listener of liveListeners) listener(sender, payload);
  };
  provider.connect();

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
    shutOut() {
      provider.disconnect();
      patch({ closed: "no-way-in" });
    },
    close() {
      doc.off("update", onUpdate);
      provider.destroy();
      awareness.destroy();
    },
  };
}
