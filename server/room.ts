import * as Y from "yjs";
import type { RefusalCode } from "../shared/hub-message";
import { LIMITS } from "../shared/limits";
import { encodeAwareness, encodeSync, SYNC } from "../shared/protocol";
import type { Clock } from "./clock";
import type { Committer } from "./committer";
import { judge } from "./gate";
import type { Urgency } from "./outbox";
import { createPresenceTable, type PresenceTable } from "./presence-table";
import type { StoredDocument } from "./store/document-records";

/** A connection, as the room sees it. */
export interface Member {
  /** The first thing a member hears, before the document says anything. */
  welcome(room: Room): void;
  send(frame: Uint8Array, urgency: Urgency): void;
  /** The room cannot be trusted any more; come back to a fresh one. */
  dismiss(): void;
}

export interface Refusal {
  readonly code: RefusalCode;
  readonly message: string;
}

/** One document in memory, and who is connected to it. */
export interface Room {
  readonly generation: number;
  readonly presence: PresenceTable<Member>;
  enter(member: Member): void;
  leave(member: Member): void;
  people(): number;
  /** Answers a state vector with what it lacks, once all of that is committed. */
  answer(member: Member, stateVector: Uint8Array): void;
  /** Sends a member who was too slow all that came since it was last answered. */
  catchUp(member: Member): void;
  /**
   * Applies an update and tells it to the others once it is committed; then calls `committed`. A
   * member who may not write may send what the document holds anyway.
   */
  take(offer: Offer): Refusal | null;
  /** To everyone but the author, at once and without a promise. */
  pass(frame: Uint8Array, author: Member): void;
  /** Sends everyone away, to come back to a fresh room. */
  dismiss(): void;
  close(): void;
}

export interface Offer {
  readonly member: Member;
  readonly update: Uint8Array;
  readonly mayWrite: boolean;
  readonly committed: () => void;
}

export interface RoomDeps {
  readonly stored: StoredDocument;
  /** Changes the document before anyone is in it. Whatever it throws keeps the room from opening. */
  readonly prepare: (doc: Y.Doc) => void;
  readonly committer: Committer;
  readonly clock: Clock;
  /** The document in memory may be half changed: let it go, and load it again. */
  readonly onBroken: () => void;
}

export function createRoom({ stored, prepare, committer, clock, onBroken }: RoomDeps): Room {
  const members = new Set<Member>();
  /** What each member had for certain when it was last answered. */
  const answered = new WeakMap<Member, Uint8Array>();
  const presence = createPresenceTable<Member>();
  const { documentId, generation } = stored;
  const { doc, prepared, take, whole } = openDocument(stored, prepare);
  let { size } = stored;
  let broken = false;

  const pass = (frame: Uint8Array, author: Member | null, urgency: Urgency) => {
    for (const member of members) if (member !== author) member.send(frame, urgency);
  };
  const afterCommit = (committed: () => void) => committer.add({ update: null, committed });
  /** What the document made of it is stored, not the frame, which may hold repetition or junk. */
  const store = (bytes: Uint8Array, author: Member | null) => {
    size += bytes.length;
    committer.add({
      update: { documentId, generation, at: clock.now(), bytes },
      committed: () => pass(encodeSync(SYNC.update, bytes), author, "news"),
    });
  };
  for (const bytes of prepared) store(bytes, null);

  const room: Room = {
    generation,
    presence,
    people: () => members.size,
    enter(member) {
      members.add(member);
      member.welcome(room);
      const stateVector = Y.encodeStateVector(doc);
      afterCommit(() => member.send(encodeSync(SYNC.step1, stateVector), "must"));
      const here = presence.all();
      if (here.length > 0) member.send(encodeAwareness(here), "must");
    },
    leave(member) {
      if (!members.delete(member)) return;
      const gone = presence.leave(member);
      if (gone.length > 0) pass(encodeAwareness(gone), member, "must");
    },
    answer(member, stateVector) {
      const isEmpty = stateVector.length === 1; // one byte: no client at all
      const reply = isEmpty ? whole() : Y.encodeStateAsUpdate(doc, stateVector);
      answered.set(member, Y.encodeStateVector(doc));
      afterCommit(() => member.send(encodeSync(SYNC.step2, reply), "must"));
    },
    catchUp(member) {
      const missed = Y.encodeStateAsUpdate(doc, answered.get(member));
      answered.set(member, Y.encodeStateVector(doc));
      afterCommit(() => member.send(encodeSync(SYNC.update, missed), "must"));
    },
    take({ member, update, mayWrite, committed }) {
      if (broken) return { code: "resync", message: "the document is being loaded again" };
      const verdict = judge(doc, update);
      if (!verdict.fit) return verdict;
      if (verdict.news && !mayWrite) {
        return { code: "role", message: "this role may not change this document" };
      }
      if (verdict.news && size + update.length > LIMITS.documentBytes) {
        return { code: "full", message: `the document has reached ${LIMITS.documentBytes} bytes` };
      }
      const emitted = verdict.news ? take(update) : [];
      if (emitted === null) {
        broken = true;
        onBroken();
        return { code: "damaged", message: "the document could not take the update" };
      }
      for (const bytes of emitted) store(bytes, member);
      afterCommit(committed);
      return null;
    },
    pass: (frame, author) => pass(frame, author, "passing"),
    dismiss() {
      for (const member of members) member.dismiss();
    },
    close() {
      doc.destroy();
    },
  };
  return room;
}

interface OpenDocument {
  readonly doc: Y.Doc;
  /** What preparing it changed. */
  readonly prepared: readonly Uint8Array[];
  /** What the document emitted while it took the update; null if it is not sound any more. */
  take(update: Uint8Array): Uint8Array[] | null;
  /** The whole of it, encoded once for all who come in the same moment. */
  whole(): Uint8Array;
}

function openDocument({ updates }: StoredDocument, prepare: (doc: Y.Doc) => void): OpenDocument {
  const doc = new Y.Doc();
  // One transaction for all of them: half the time of one each.
  doc.transact(() => {
    for (const update of updates) Y.applyUpdate(doc, update);
  });
  let emitted: Uint8Array[] = [];
  let encoded: Uint8Array | null = null;
  doc.on("update", (update: Uint8Array) => {
    emitted.push(update);
    encoded = null;
  });
  try {
    prepare(doc);
  } catch (error) {
    doc.destroy();
    throw error;
  }
  return {
    doc,
    prepared: emitted,
    take(update) {
      emitted = [];
      try {
        Y.applyUpdate(doc, update);
      } catch {
        return null;
      }
      const { pendingStructs, pendingDs } = doc.store;
      return pendingStructs === null && pendingDs === null ? emitted : null;
    },
    whole() {
      encoded ??= Y.encodeStateAsUpdate(doc);
      return encoded;
    },
  };
}
