import type * as Y from "yjs";
import type { DocumentName } from "../shared/document-name";
import { DOCUMENT_ROOTS } from "../shared/document-shape";
import { HUB_LIMITS } from "../shared/limits";
import type { SheetId } from "../shared/sheet-id";
import type { Clock } from "./clock";
import type { Committer } from "./committer";
import type { Notices } from "./notices";
import { createRoom, type Dismissal, type Member, type Offer, type Room } from "./room";
import { createRoomLife, type RoomLife, type RoomState } from "./room-life";
import type { StoredDocument } from "./store/document-records";

export interface RoomName {
  readonly sheet: SheetId;
  readonly document: DocumentName;
}

/** A room on its way from loading to closed. */
interface Seat {
  readonly life: RoomLife;
  /** Arrivals during loading share one load. */
  readonly opening: Promise<Room | null>;
  /** What came of the load. */
  room: Room | null;
  /** An arrival during draining waits for its end, and opens the room anew. */
  closed: Promise<void>;
  /** Calls off its being let go, while it is open and empty. */
  callOff: (() => void) | null;
}

interface OpenRoom {
  readonly sheet: SheetId;
  readonly letGo: (why: Dismissal) => void;
}

export interface Rooms {
  /** Seats a member; null if there is no such document. Rejects if it cannot be loaded or prepared. */
  enter(name: RoomName, member: Member): Promise<Room | null>;
  /** The member goes; an empty room is let go a while later, once everything in it is committed. */
  leave(name: RoomName, room: Room, member: Member): void;
  /** Sends everyone away and loads the document anew: the one in memory cannot be trusted. */
  reload(documentId: number): void;
  /** Sends everyone away from a sheet's documents, which have another generation by now. */
  void(sheet: string): void;
  states(): RoomState[];
  /** Of each document that is open. */
  bytes(): number[];
}

/**
 * Brings a loaded document to today's schema; what it writes is stored like anyone's update.
 *
 * Errors:  an Error with the code "newer-version": this server cannot read the document
 */
export type PrepareDocument = (name: DocumentName, doc: Y.Doc) => void;

export function isNewerVersion(error: unknown): boolean {
  return error instanceof Error && "code" in error && error.code === "newer-version";
}

export interface RoomsDeps {
  readonly load: (name: RoomName) => Promise<StoredDocument | null>;
  readonly prepareDocument: PrepareDocument;
  readonly committer: Committer;
  readonly clock: Clock;
  readonly lingerMs?: number;
  readonly notices: Pick<Notices, "answered" | "broadcast" | "gap" | "snapshotsDamaged">;
  /** An update passed the gate and left a document unsound all the same. */
  readonly onPoison: (documentId: number, offer: Offer) => void;
  /** A room is out of memory. */
  readonly onClosed?: (documentId: number) => void;
}

export function createRooms(deps: RoomsDeps): Rooms {
  const { committer, clock, notices, lingerMs = HUB_LIMITS.roomLingerMs } = deps;
  const seats = new Map<string, Seat>();
  /** The rooms that are open, by the number of their document. */
  const open = new Map<number, OpenRoom>();

  /** Every way out of memory goes through here, and it begins with the disk. */
  function drain(key: string, seat: Seat, room: Room): void {
    if (seat.life.state() !== "open") return;
    seat.life.move("draining");
    seat.callOff?.();
    open.delete(room.documentId);
    seat.closed = committed(committer, room.documentId).then(() => {
      seat.life.move("closed");
      seats.delete(key);
      room.close();
      deps.onClosed?.(room.documentId);
    });
  }

  async function load(name: RoomName, seat: () => Seat): Promise<Room | null> {
    const stored = await deps.load(name);
    if (stored === null) return null;
    const { documentId } = stored;
    const letGo = (why: Dismissal) => {
      drain(keyOf(name), seat(), room);
      room.dismiss(why);
    };
    const room: Room = createRoom({
      ...{ stored, committer, clock, notices },
      roots: DOCUMENT_ROOTS[name.document],
      prepare: (doc) => deps.prepareDocument(name.document, doc),
      onVoid: letGo,
      onPoison(offer) {
        letGo("reload");
        deps.onPoison(documentId, offer);
      },
    });
    if (room.hasGap) notices.gap(documentId);
    const { damagedSnapshots } = stored;
    if (damagedSnapshots > 0) notices.snapshotsDamaged(documentId, damagedSnapshots);
    open.set(documentId, { sheet: name.sheet, letGo });
    return room;
  }

  function begin(name: RoomName): Seat {
    const key = keyOf(name);
    const life = createRoomLife();
    const end = (result: Room | null) => {
      life.move(result === null ? "closed" : "open");
      seat.room = result;
      if (result === null) seats.delete(key);
      return result;
    };
    const opening = load(name, () => seat).then(end, (error: unknown) => {
      end(null);
      throw error;
    });
    const seat: Seat = { life, opening, room: null, closed: Promise.resolve(), callOff: null };
    seats.set(key, seat);
    return seat;
  }

  return {
    async enter(name, member) {
      for (;;) {
        const seat = seats.get(keyOf(name)) ?? begin(name);
        const room = await seat.opening;
        if (room === null) return null;
        if (seat.life.state() !== "open") {
          await seat.closed;
          continue;
        }
        seat.callOff?.();
        seat.callOff = null;
        room.enter(member);
        return room;
      }
    },
    leave(name, room, member) {
      room.leave(member);
      const seat = seats.get(keyOf(name));
      if (seat?.room !== room || seat.life.state() !== "open" || room.people() > 0) return;
      seat.callOff = clock.after(lingerMs, () => drain(keyOf(name), seat, room));
    },
    reload: (documentId) => open.get(documentId)?.letGo("reload"),
    void(sheet) {
      for (const room of [...open.values()]) if (room.sheet === sheet) room.letGo("generation");
    },
    bytes: () => [...seats.values()].flatMap(({ room }) => room?.bytes() ?? []),
    states: () => [...seats.values()].map(({ life }) => life.state()),
  };
}

/** Resolves when everything of the document so far is on the disk, or void. */
function committed(committer: Committer, documentId: number): Promise<void> {
  return new Promise((resolve) => {
    const voided = () => resolve();
    committer.add({ documentId, update: null, committed: resolve, voided });
  });
}

function keyOf({ sheet, document }: RoomName): string {
  return `${sheet}/${document}`;
}
