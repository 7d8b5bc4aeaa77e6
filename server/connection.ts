import type { WebSocket } from "ws";
import { CLOSE } from "../shared/close-code";
import type { DocumentName } from "../shared/document-name";
import {
  encodeBeat,
  encodeHello,
  encodeRole,
  encodeStorage,
  type Storage,
} from "../shared/hub-message";
import { HUB_LIMITS, LIMITS, type PageAllowance } from "../shared/limits";
import { encodeAwareness, isUpdateFrame, PROTOCOL_VERSION } from "../shared/protocol";
import type { Role } from "../shared/role";
import type { SheetId } from "../shared/sheet-id";
import type { Claims } from "./claims";
import type { Clock } from "./clock";
import type { Notices } from "./notices";
import { createOutbox, type Line } from "./outbox";
import { createPace } from "./pace";
import { createPageDesk, type PageDesk } from "./page-desk";
import { createReading } from "./reading";
import type { Dismissal, Member, Room } from "./room";
import type { Grant } from "./store/access-records";

/** Who stands behind a socket, as the upgrade found out. */
export interface Visitor {
  readonly sheet: SheetId;
  readonly document: DocumentName;
  /** What the device may do on the sheet, at the time of the upgrade. */
  readonly grant: Grant;
  /** The device's cookie, hashed, in hex. */
  readonly device: string;
  /** The awareness client id the page named, if it named one. */
  readonly client: number | null;
  /** The generation under which the page knows the document it brings, if it brings one. */
  readonly generation: number | null;
}

/** How the disk does for one document, and whether nothing more can be taken for it. */
export interface DiskState {
  readonly storage: Storage;
  readonly readOnly: boolean;
}

/** One socket, from the first byte to the last. */
export interface Connection extends Member {
  readonly visitor: Visitor;
  /** The document it is seated at; null before that. */
  documentId(): number | null;
  grant(): Grant;
  /** Stop reading while the disk is behind. */
  press(high: boolean): void;
  tellStorage(disk: DiskState): void;
  /** Its right to the sheet may have changed: nothing of it is done before that is settled. */
  doubt(): void;
  /** What it may do from now on; null if nothing any more. */
  settle(grant: Grant | null): void;
  /** Reads nothing any more; what was read is done. */
  stopReading(): void;
  close(code: number, reason: string): void;
  /** Called every few seconds: says something if it was quiet, and looks whether anyone is there. */
  tick(): void;
  unsent(): number;
  /** The socket is gone. */
  end(): void;
}

export interface ConnectionDeps {
  readonly socket: WebSocket;
  readonly line: Line;
  readonly visitor: Visitor;
  readonly clock: Clock;
  readonly claims: Claims;
  readonly notices: Notices;
  readonly instance: string;
  /** A number for this connection. */
  readonly number: number;
  readonly disk: (documentId: number) => DiskState;
  readonly allowance: PageAllowance;
}

export function createConnection(deps: ConnectionDeps): Connection {
  const { socket, line, visitor, clock, claims, notices } = deps;
  const reading = createReading(socket);
  const pace = createPagePace(deps, reading);
  const outbox = createOutbox({
    ...{ socket, line, clock },
    onFull: (full) => (full ? reading.hold("outbox") : reading.release("outbox")),
    onDrained({ news, presence }) {
      if (room === null) return;
      notices.caughtUp();
      if (news) room.catchUp(connection);
      if (presence) outbox.send(encodeAwareness(room.presence.all()), "must");
    },
  });
  /** Frames that were read and may not be done yet. */
  const parked: Uint8Array[] = [];
  let { grant } = visitor;
  let room: Room | null = null;
  let desk: PageDesk | null = null;
  let heardAt = clock.now();
  let pingedAt = clock.now();
  let closing = false;
  let inDoubt = false;
  let readOnly = false;

  const close = (code: number, reason: string) => {
    if (closing) return;
    closing = true;
    parked.length = 0;
    reading.releaseAll();
    socket.close(code, reason);
  };
  const mustWait = (frame: Uint8Array) => inDoubt || (readOnly && isUpdateFrame(frame));
  const receive = (frame: Uint8Array) => {
    if (parked.length === 0 && !mustWait(frame)) return desk?.receive(frame);
    parked.push(frame);
    reading.hold("parked");
  };
  const unpark = () => {
    for (let next = parked[0]; next !== undefined && !mustWait(next); next = parked[0]) {
      parked.shift();
      desk?.receive(next);
    }
    if (parked.length === 0) reading.release("parked");
  };
  socket.on("message", (data: Buffer, isBinary: boolean) => {
    heardAt = clock.now();
    if (closing) return; // whoever was sent away is not listened to any more
    pace(data.length);
    receive(isBinary ? data : new Uint8Array());
  });
  socket.on("pong", () => {
    heardAt = clock.now();
  });
  socket.on("error", () => socket.terminate());
  reading.hold("loading");

  const connection: Connection = {
    visitor,
    documentId: () => room?.documentId ?? null,
    grant: () => grant,
    send: outbox.send,
    close,
    welcome(opened: Room) {
      room = opened;
      outbox.send(encodeHello(helloOf(deps, opened, grant.role)), "must");
      if (visitor.generation !== null && visitor.generation !== opened.generation) {
        return close(CLOSE.otherGeneration, "the sheet was put back to an older state");
      }
      const role = () => grant.role;
      desk = createPageDesk({
        ...{ room, member: connection, visitor, role, clock, claims, notices, close },
      });
      const disk = deps.disk(opened.documentId);
      if (disk.storage.state !== "ok") connection.tellStorage(disk);
      reading.release("loading");
    },
    dismiss(why: Dismissal) {
      if (why === "reload") return close(CLOSE.going, "the document is loaded again");
      close(CLOSE.otherGeneration, "the sheet was put back to an older state");
    },
    press: (high) => (high ? reading.hold("disk") : reading.release("disk")),
    tellStorage(disk) {
      ({ readOnly } = disk);
      outbox.send(encodeStorage(disk.storage), "must");
      unpark();
    },
    doubt() {
      inDoubt = true;
      reading.hold("access");
    },
    settle(next) {
      if (next === null) return close(CLOSE.revoked, "the link is revoked or has expired");
      const told = next.role !== grant.role && desk !== null;
      grant = next;
      if (told) outbox.send(encodeRole(next.role), "must");
      inDoubt = false;
      unpark();
      reading.release("access");
    },
    stopReading: () => reading.hold("going"),
    tick() {
      const now = clock.now();
      if (reading.isHeld()) heardAt = now; // who is not read cannot be heard
      if (now - heardAt > HUB_LIMITS.deadAfterMs) return socket.terminate();
      if (outbox.isStuck()) {
        notices.slowReaderClosed();
        close(CLOSE.slowReader, "nothing was read for too long");
        // A goodbye that nobody reads is not waited for.
        clock.after(HUB_LIMITS.goodbyeMs, () => socket.terminate());
        return;
      }
      if (outbox.silentMs() >= HUB_LIMITS.beatAfterMs) outbox.send(encodeBeat(), "must");
      if (now - pingedAt < HUB_LIMITS.beatAfterMs) return;
      pingedAt = now;
      socket.ping();
    },
    unsent: outbox.unsent,
    end() {
      closing = true;
      parked.length = 0;
      desk?.end();
      desk = null;
    },
  };
  return connection;
}

function helloOf(
  { visitor, instance, number, clock, allowance }: ConnectionDeps,
  room: Room,
  role: Role,
) {
  return {
    protocol: PROTOCOL_VERSION,
    role,
    document: visitor.document,
    generation: room.generation,
    instance,
    connection: number,
    serverTime: clock.now(),
    limits: { ...LIMITS, ...allowance },
  };
}

/** Holds a sender to its number of messages and bytes a second, by not reading on. */
function createPagePace(
  { clock, allowance }: ConnectionDeps,
  reading: ReturnType<typeof createReading>,
): (bytes: number) => void {
  const { messagesPerSecond, bytesPerSecond } = allowance;
  const messages = createPace(
    { perSecond: messagesPerSecond, burst: Math.max(LIMITS.messagesBurst, messagesPerSecond) },
    clock,
  );
  const bytes = createPace(
    { perSecond: bytesPerSecond, burst: Math.max(LIMITS.bytesBurst, bytesPerSecond) },
    clock,
  );
  let waits = false;
  /** One timer, however many frames came in one piece: the first one's wait is over long before the last one's. */
  const rest = () => {
    const waitMs = Math.max(messages.waitMs(), bytes.waitMs());
    if (waitMs === 0) return reading.release("pace");
    reading.hold("pace");
    if (waits) return;
    waits = true;
    clock.after(waitMs, () => {
      waits = false;
      rest();
    });
  };
  return (length) => {
    messages.take(1);
    bytes.take(length);
    rest();
  };
}
