import type { WebSocket } from "ws";
import { CLOSE } from "../shared/close-code";
import { encodeGoing, encodeStorage } from "../shared/hub-message";
import { LIMITS } from "../shared/limits";
import { createClaims } from "./claims";
import type { Clock } from "./clock";
import { createCommitter } from "./committer";
import { type Connection, createConnection, type Visitor } from "./connection";
import { createRooms, isNewerVersion, type PrepareDocument } from "./rooms";
import type { NewBatch } from "./store/document-records";
import type { Store } from "./store/store";
import { StoreError } from "./store/store-error";

const TICK_MS = 5000;
const COME_BACK_MS = { min: 500, max: 3000 }; // a restart takes about a second; spread the return

/** The sheets that are open, and everyone connected to them. */
export interface Hub {
  connect(socket: WebSocket, visitor: Visitor): void;
  /** Sends away whoever came by a link, now and if they are just arriving. */
  revoke(link: string): void;
  /** No more arrivals, everything committed, everyone sent away. Resolves to what is not committed. */
  drain(withinMs: number): Promise<number>;
  isDraining(): boolean;
  /** How the disk does; for the health doors. */
  storage(): { readonly state: string; readonly waiting: number };
  connections(): number;
  /** For tests and metrics: in which states the rooms are. */
  rooms(): string[];
}

export interface HubDeps {
  readonly store: Store;
  readonly clock: Clock;
  /** A name for this process. */
  readonly instance: string;
  readonly prepareDocument: PrepareDocument;
  readonly roomLingerMs?: number;
}

export function createHub(deps: HubDeps): Hub {
  const { store, clock, instance, prepareDocument, roomLingerMs } = deps;
  const connections = new Set<Connection>();
  const revoked = new Set<string>();
  const claims = createClaims();
  let draining = false;
  let numbers = 0;
  const toAll = (frame: Uint8Array) => {
    for (const connection of connections) connection.send(frame, "must");
  };
  const committer = createCommitter({
    append: (batch) => appendAll(store, batch),
    clock,
    onState: (storage) => toAll(encodeStorage(storage)),
    onPressure: (high) => {
      for (const connection of connections) connection.press(high);
    },
  });
  const rooms = createRooms({
    load: ({ sheet, document }) => store.loadDocument(sheet, document),
    prepareDocument,
    committer,
    clock,
    ...(roomLingerMs === undefined ? {} : { lingerMs: roomLingerMs }),
  });
  const stopTicking = everyFewSeconds(clock, () => {
    for (const connection of connections) connection.tick();
  });

  async function seat(connection: Connection, socket: WebSocket): Promise<void> {
    const { visitor } = connection;
    try {
      const room = await rooms.enter(visitor, connection);
      if (room === null) return connection.close(CLOSE.gone, "there is no such document");
      const goodbye = () => {
        rooms.leave(visitor, room, connection);
        connection.end();
      };
      if (socket.readyState === socket.CLOSED) goodbye();
      else socket.once("close", goodbye);
    } catch (error) {
      if (isNewerVersion(error)) {
        return connection.close(CLOSE.newerVersion, "the document was made by a newer version");
      }
      connection.close(CLOSE.going, "the document could not be loaded");
    }
  }
  const crowded = ({ sheet, document }: Visitor) => {
    const same = [...connections].filter(
      ({ visitor }) => visitor.sheet === sheet && visitor.document === document,
    );
    return same.length >= LIMITS.connectionsPerDocument;
  };

  return {
    connect(socket, visitor) {
      const isFull = crowded(visitor);
      const connection = createConnection({
        ...{ socket, visitor, clock, claims, instance },
        number: ++numbers,
        storage: committer.state,
      });
      connections.add(connection);
      socket.once("close", () => {
        connections.delete(connection);
      });
      if (revoked.has(visitor.link)) return connection.close(CLOSE.revoked, "the link is revoked");
      if (draining) return connection.close(CLOSE.going, "the hub is going");
      if (isFull) return connection.close(CLOSE.crowded, "too many connections to this document");
      void seat(connection, socket);
    },
    revoke(link) {
      revoked.add(link);
      for (const connection of connections) {
        if (connection.visitor.link === link)
          connection.close(CLOSE.revoked, "the link is revoked");
      }
    },
    async drain(withinMs) {
      draining = true;
      stopTicking();
      const { min, max } = COME_BACK_MS;
      toAll(encodeGoing({ minMs: min, maxMs: max, reason: "restart" }));
      for (const connection of connections) connection.press(true);
      await Promise.race([committer.idle(), new Promise<void>((r) => clock.after(withinMs, r))]);
      for (const connection of connections) connection.close(CLOSE.going, "the hub is going");
      return committer.waiting();
    },
    isDraining: () => draining,
    storage: () => ({ state: committer.state().state, waiting: committer.waiting() }),
    connections: () => connections.size,
    rooms: rooms.states,
  };
}

/** Nothing may be called saved that the store has refused. */
async function appendAll(store: Store, batch: NewBatch): Promise<void> {
  const [refused] = (await store.appendUpdates(batch)).refused;
  if (refused !== undefined)
    throw new StoreError("broken", `an update was refused: ${refused.reason}`);
}

function everyFewSeconds(clock: Clock, run: () => void): () => void {
  let callOff = clock.after(TICK_MS, again);
  function again(): void {
    run();
    callOff = clock.after(TICK_MS, again);
  }
  return () => callOff();
}
