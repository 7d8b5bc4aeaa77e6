import type * as Y from "yjs";
import type { DocumentName } from "../shared/document-name";
import { HUB_LIMITS } from "../shared/limits";
import type { SheetId } from "../shared/sheet-id";
import type { Clock } from "./clock";
import type { Committer } from "./committer";
import { createRoom, type Member, type Room } from "./room";
import type { StoredDocument } from "./store/document-records";

export interface RoomName {
  readonly sheet: SheetId;
  readonly document: DocumentName;
}

/**
 * A room is loading, open or closing, and never two of them. Arrivals during loading share one load;
 * an arrival during closing waits for the end of it and opens the room anew.
 */
type Seat =
  | { readonly state: "loading"; readonly room: Promise<Room | null> }
  | { readonly state: "open"; readonly room: Room; callOff: (() => void) | null }
  | { readonly state: "closing"; readonly closed: Promise<void> };

export interface Rooms {
  /** Seats a member; null if there is no such document. Rejects if it cannot be loaded or prepared. */
  enter(name: RoomName, member: Member): Promise<Room | null>;
  /** The member goes; an empty room is let go a while later, once everything in it is committed. */
  leave(name: RoomName, room: Room, member: Member): void;
  states(): Seat["state"][];
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
}

export function createRooms(deps: RoomsDeps): Rooms {
  const { load, prepareDocument, committer, clock, lingerMs = HUB_LIMITS.roomLingerMs } = deps;
  const seats = new Map<string, Seat>();

  /** Every way out of memory goes through here, and it begins with the disk. */
  function close(key: string, room: Room): void {
    const closed = new Promise<void>((resolve) => {
      committer.add({ update: null, committed: resolve });
    }).then(() => {
      seats.delete(key);
      room.close();
    });
    seats.set(key, { state: "closing", closed });
  }

  async function open(name: RoomName, key: string): Promise<Room | null> {
    const stored = await load(name);
    if (stored === null) return null;
    const room: Room = createRoom({
      stored,
      prepare: (doc) => prepareDocument(name.document, doc),
      committer,
      clock,
      onBroken: () => {
        close(key, room);
        room.dismiss();
      },
    });
    return room;
  }

  async function begin(name: RoomName, key: string): Promise<Room | null> {
    const opening = open(name, key);
    seats.set(key, { state: "loading", room: opening });
    try {
      const room = await opening;
      if (room === null) seats.delete(key);
      else seats.set(key, { state: "open", room, callOff: null });
      return room;
    } catch (error) {
      seats.delete(key);
      throw error;
    }
  }

  return {
    async enter(name, member) {
      const key = keyOf(name);
      for (;;) {
        const seat = seats.get(key);
        if (seat === undefined) {
          if ((await begin(name, key)) === null) return null;
        } else if (seat.state === "loading") {
          if ((await seat.room) === null) return null;
        } else if (seat.state === "closing") {
          await seat.closed;
        } else {
          seat.callOff?.();
          seat.callOff = null;
          seat.room.enter(member);
          return seat.room;
        }
      }
    },
    leave(name, room, member) {
      const key = keyOf(name);
      room.leave(member);
      const seat = seats.get(key);
      if (seat?.state !== "open" || seat.room !== room || room.people() > 0) return;
      seat.callOff = clock.after(lingerMs, () => close(key, room));
    },
    states: () => [...seats.values()].map(({ state }) => state),
  };
}

function keyOf({ sheet, document }: RoomName): string {
  return `${sheet}/${document}`;
}
