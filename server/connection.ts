import type { WebSocket } from "ws";
import { CLOSE } from "../shared/close-code";
import type { DocumentName } from "../shared/document-name";
import { encodeBeat, encodeHello, encodeStorage, type Storage } from "../shared/hub-message";
import { HUB_LIMITS, LIMITS } from "../shared/limits";
import { PROTOCOL_VERSION } from "../shared/protocol";
import type { Role } from "../shared/role";
import type { SheetId } from "../shared/sheet-id";
import type { Claims } from "./claims";
import type { Clock } from "./clock";
import { createOutbox } from "./outbox";
import { createPace } from "./pace";
import { createPageDesk, type PageDesk } from "./page-desk";
import { createReading } from "./reading";
import type { Member, Room } from "./room";

/** Who stands behind a socket, as the upgrade found out. */
export interface Visitor {
  readonly sheet: SheetId;
  readonly document: DocumentName;
  readonly role: Role;
  /** The link that let them in. */
  readonly link: string;
  /** The device's cookie, hashed, in hex. */
  readonly device: string;
  /** The awareness client id the page named, if it named one. */
  readonly client: number | null;
}

/** One socket, from the first byte to the last. */
export interface Connection extends Member {
  readonly visitor: Visitor;
  /** Stop reading while the disk is behind. */
  press(high: boolean): void;
  close(code: number, reason: string): void;
  /** Called every few seconds: says something if it was quiet, and looks whether anyone is there. */
  tick(): void;
  /** The socket is gone. */
  end(): void;
}

export interface ConnectionDeps {
  readonly socket: WebSocket;
  readonly visitor: Visitor;
  readonly clock: Clock;
  readonly claims: Claims;
  readonly instance: string;
  /** A number for this connection. */
  readonly number: number;
  readonly storage: () => Storage;
}

export function createConnection(deps: ConnectionDeps): Connection {
  const { socket, visitor, clock, claims } = deps;
  const reading = createReading(socket);
  const pace = createPagePace(deps, reading);
  const outbox = createOutbox({ socket, clock, onDrained: () => desk?.catchUp() });
  let desk: PageDesk | null = null;
  let heardAt = clock.now();
  let pingedAt = clock.now();
  let closing = false;

  const close = (code: number, reason: string) => {
    closing = true;
    reading.releaseAll(); // or the page's own goodbye would never be read
    socket.close(code, reason);
  };
  socket.on("message", (data: Buffer, isBinary: boolean) => {
    heardAt = clock.now();
    if (closing) return; // whoever was sent away is not listened to any more
    pace(data.length);
    desk?.receive(isBinary ? data : new Uint8Array());
  });
  socket.on("pong", () => {
    heardAt = clock.now();
  });
  socket.on("error", () => socket.terminate());
  reading.hold("loading");

  const connection: Connection = {
    visitor,
    send: outbox.send,
    close,
    welcome(room: Room) {
      outbox.send(encodeHello(helloOf(deps, room)), "must");
      const storage = deps.storage();
      if (storage.state !== "ok") outbox.send(encodeStorage(storage), "must");
      desk = createPageDesk({ room, member: connection, visitor, clock, claims, close });
      reading.release("loading");
    },
    dismiss: () => close(CLOSE.going, "the document is loaded again"),
    press: (high) => (high ? reading.hold("disk") : reading.release("disk")),
    tick() {
      const now = clock.now();
      if (now - heardAt > HUB_LIMITS.deadAfterMs) return socket.terminate();
      if (outbox.isStuck()) return close(CLOSE.slowReader, "nothing was read for too long");
      if (outbox.silentMs() >= HUB_LIMITS.beatAfterMs) outbox.send(encodeBeat(), "must");
      if (now - pingedAt < HUB_LIMITS.beatAfterMs) return;
      pingedAt = now;
      socket.ping();
    },
    end() {
      closing = true;
      desk?.end();
      desk = null;
    },
  };
  return connection;
}

function helloOf({ visitor, instance, number, clock }: ConnectionDeps, room: Room) {
  return {
    protocol: PROTOCOL_VERSION,
    role: visitor.role,
    document: visitor.document,
    generation: room.generation,
    instance,
    connection: number,
    serverTime: clock.now(),
    limits: LIMITS,
  };
}

/** Holds a sender to its number of messages and bytes a second, by not reading on. */
function createPagePace(
  { clock }: ConnectionDeps,
  reading: ReturnType<typeof createReading>,
): (bytes: number) => void {
  const messages = createPace(
    { perSecond: LIMITS.messagesPerSecond, burst: LIMITS.messagesBurst },
    clock,
  );
  const bytes = createPace({ perSecond: LIMITS.bytesPerSecond, burst: LIMITS.bytesBurst }, clock);
  return (length) => {
    messages.take(1);
    bytes.take(length);
    const waitMs = Math.max(messages.waitMs(), bytes.waitMs());
    if (waitMs === 0) return;
    reading.hold("pace");
    clock.after(waitMs, () => reading.release("pace"));
  };
}
