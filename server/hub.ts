import type { WebSocket } from "ws";
import { CLOSE } from "../shared/close-code";
import { encodeGoing } from "../shared/hub-message";
import { HUB_LIMITS, LIMITS, type PageAllowance } from "../shared/limits";
import type { SheetId } from "../shared/sheet-id";
import { createAccessWatch } from "./access/watch-access";
import { createClaims } from "./claims";
import { type Clock, everyWhile } from "./clock";
import { createCommitter } from "./committer";
import { createCompactor } from "./compactor";
import { type Connection, createConnection, type Visitor } from "./connection";
import { createDisks } from "./disks";
import { NO_NOTICES, type Notices } from "./notices";
import type { Line } from "./outbox";
import type { RoomState } from "./room-life";
import { createRooms, isNewerVersion, type PrepareDocument } from "./rooms";
import type { Store } from "./store/store";
import { createStrikes } from "./strikes";

/** A page's socket, and what it writes to. */
export interface Plug {
  readonly socket: WebSocket;
  readonly line: Line;
}

/** The sheets that are open, and everyone connected to them. */
export interface Hub {
  /** `mark` is what `accessMark` said before the visitor's right was asked for. */
  connect(plug: Plug, visitor: Visitor, mark: number): void;
  accessMark(): number;
  /** Rights on a sheet have changed, of everyone or of one device: whoever is connected is held to them. */
  reviewAccess(sheet: SheetId, device?: string): void;
  /** No more arrivals, everything committed, everyone sent away. Resolves to what is not committed. */
  drain(withinMs: number): Promise<number>;
  isDraining(): boolean;
  figures(): Figures;
}

/** How the hub does, at this moment. */
export interface Figures {
  readonly storage: string;
  /** Updates that wait for the disk, and their bytes. */
  readonly waiting: number;
  readonly waitingBytes: number;
  /** ms since 1970. */
  readonly committedAt: number | null;
  readonly connections: readonly Connection[];
  /** In which states the rooms are. */
  readonly rooms: readonly RoomState[];
  /** How large each document in memory is. */
  readonly documentBytes: readonly number[];
}

export interface HubDeps {
  readonly store: Store;
  readonly clock: Clock;
  /** A name for this process. */
  readonly instance: string;
  readonly prepareDocument: PrepareDocument;
  readonly notices?: Notices;
  readonly pageAllowance?: PageAllowance;
  readonly roomLingerMs?: number;
  /** How long pages that were told that the hub goes may still hand over what they hold. */
  readonly graceMs?: number;
}

export function createHub(deps: HubDeps): Hub {
  const { store, clock, instance, prepareDocument, notices = NO_NOTICES } = deps;
  const connections = new Set<Connection>();
  const claims = createClaims();
  const strikes = createStrikes();
  let draining = false;
  let numbers = 0;
  const disks = createDisks({ connections, global: () => committer.state() });
  const compactor = createCompactor({
    ...{ instance, clock },
    compact: (order) => store.compact(order),
    onDone: notices.compacted,
  });
  const committer = createCommitter({
    append: (batch) => store.appendUpdates(batch),
    clock,
    onState: disks.changed,
    onPressure: (high) => {
      for (const connection of connections) connection.press(high);
    },
    onCommit: notices.committed,
    onStored: compactor.look,
    onFault(error, documentId) {
      notices.fault("room", error);
      rooms.reload(documentId);
    },
  });
  const rooms = createRooms({
    load: ({ sheet, document }) => store.loadDocument(sheet, document),
    ...{ prepareDocument, committer, clock, notices },
    ...(deps.roomLingerMs === undefined ? {} : { lingerMs: deps.roomLingerMs }),
    onClosed: compactor.closed,
    onPoison(documentId, { device, update }) {
      const by = Buffer.from(device, "hex");
      const item = { documentId, at: clock.now(), device: by, reason: "unsound", bytes: update };
      store.quarantine(item).catch((error: unknown) => notices.fault("quarantine", error));
      notices.poisoned(device);
      if (!strikes.add(device)) return;
      for (const connection of connections) {
        if (connection.visitor.device === device) connection.close(CLOSE.shutOut, SHUT_OUT);
      }
    },
  });
  const access = createAccessWatch({
    ...{ store, clock, connections, notices },
    onGeneration: rooms.void,
  });
  const stopTicking = everyWhile(clock, HUB_LIMITS.tickMs, () => {
    for (const connection of connections) {
      try {
        connection.tick();
      } catch (error) {
        notices.fault("tick", error); // of one connection; the others have their turn
      }
    }
  });

  async function seat(connection: Connection, socket: WebSocket): Promise<void> {
    const { visitor } = connection;
    const since = clock.now();
    try {
      const room = await rooms.enter(visitor, connection);
      if (room === null) return connection.close(CLOSE.gone, "there is no such document");
      notices.joined(clock.now() - since);
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
      notices.fault("load", error);
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
    connect({ socket, line }, visitor, mark) {
      const isFull = crowded(visitor);
      const connection = createConnection({
        ...{ socket, line, visitor, clock, claims, notices, instance },
        number: ++numbers,
        disk: disks.of,
        allowance: deps.pageAllowance ?? LIMITS,
      });
      connections.add(connection);
      socket.once("close", () => {
        connections.delete(connection);
      });
      if (draining) return connection.close(CLOSE.going, "the hub is going");
      if (strikes.areOut(visitor.device)) return connection.close(CLOSE.shutOut, SHUT_OUT);
      if (isFull) return connection.close(CLOSE.crowded, "too many connections to this document");
      access.greet(connection, mark);
      const tooLong = clock.after(HUB_LIMITS.loadMs, () => {
        if (connection.documentId() !== null) return;
        connection.close(CLOSE.going, "the document could not be loaded in time");
      });
      void seat(connection, socket).finally(tooLong);
    },
    accessMark: access.mark,
    reviewAccess: access.review,
    async drain(withinMs) {
      draining = true;
      access.stop();
      compactor.stop();
      const since = clock.now();
      const { graceMs = HUB_LIMITS.graceMs } = deps;
      const left = () => Math.max(0, withinMs - (clock.now() - since));
      const { comeBackFirstMs: minMs, comeBackLastMs: maxMs } = HUB_LIMITS;
      const going = encodeGoing({ minMs, maxMs, reason: "restart" });
      for (const connection of connections) connection.send(going, "must");
      // Those who hold something may hand it over; when the last has gone, nobody is waited for.
      if (connections.size > 0) await passed(clock, Math.min(graceMs, left()));
      for (const connection of connections) connection.stopReading();
      const settled = Promise.all([committer.idle(), compactor.idle()]);
      await Promise.race([settled, passed(clock, left())]);
      // A process that ends in the middle of a call to the database would end as if it had crashed.
      await Promise.race([committer.halt(), passed(clock, HUB_LIMITS.haltMs)]);
      stopTicking();
      await closeSpread([...connections], clock);
      return committer.waiting();
    },
    isDraining: () => draining,
    figures: () => ({
      storage: committer.state().state,
      waiting: committer.waiting(),
      waitingBytes: committer.waitingBytes(),
      committedAt: committer.committedAt(),
      connections: [...connections],
      rooms: rooms.states(),
      documentBytes: rooms.bytes(),
    }),
  };
}

const SHUT_OUT = "updates from this device broke documents";

/** Not all in the same moment: they all come back. */
async function closeSpread(list: readonly Connection[], clock: Clock): Promise<void> {
  for (const [index, connection] of list.entries()) {
    connection.close(CLOSE.going, "the hub is going");
    if (index % HUB_LIMITS.closedAtOnce === HUB_LIMITS.closedAtOnce - 1) await passed(clock, 10);
  }
}

function passed(clock: Clock, ms: number): Promise<void> {
  return new Promise((resolve) => {
    clock.after(ms, resolve);
  });
}
