import * as Y from "yjs";
import type { RefusalCode } from "../shared/hub-message";
import { LIMITS } from "../shared/limits";
import { encodeAwareness, encodeSync, SYNC } from "../shared/protocol";
import type { Clock } from "./clock";
import type { Committer } from "./committer";
import { judge } from "./gate";
import type { Notices } from "./notices";
import { openDocument } from "./open-document";
import type { Urgency } from "./outbox";
import { createPresenceTable, type PresenceTable } from "./presence-table";
import type { Claim, StoredDocument } from "./store/document-records";

/** Why a room sends everyone away: to load it again, or because what they hold is of the past. */
export type Dismissal = "reload" | "generation";

/** A connection, as the room sees it. */
export interface Member {
  /** The first thing a member hears, before the document says anything. */
  welcome(room: Room): void;
  send(frame: Uint8Array, urgency: Urgency): void;
  /** The room cannot be trusted any more; come back to a fresh one. */
  dismiss(why: Dismissal): void;
}

export interface Refusal {
  readonly code: RefusalCode;
  readonly message: string;
}

/** One document in memory, and who is connected to it. */
export interface Room {
  readonly documentId: number;
  readonly generation: number;
  /** What is stored of it has a gap, and what stands behind the gap is not shown. */
  readonly hasGap: boolean;
  readonly presence: PresenceTable<Member>;
  enter(member: Member): void;
  leave(member: Member): void;
  people(): number;
  /** Of the document, as the sum of its updates. */
  bytes(): number;
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
  pass(frame: Uint8Array, author: Member, urgency: "presence" | "passing"): void;
  /** Sends everyone away, to come back to a fresh room. */
  dismiss(why: Dismissal): void;
  close(): void;
}

export interface Offer {
  readonly member: Member;
  /** The device that offers it. */
  readonly device: string;
  readonly update: Uint8Array;
  readonly mayWrite: boolean;
  readonly committed: () => void;
}

export interface RoomDeps {
  readonly stored: StoredDocument;
  /** The names of the maps that the document has. */
  readonly roots: readonly string[];
  /** Changes the document before anyone is in it. Whatever it throws keeps the room from opening. */
  readonly prepare: (doc: Y.Doc) => void;
  readonly committer: Committer;
  readonly clock: Clock;
  readonly notices: Pick<Notices, "answered" | "broadcast">;
  /** The document in memory may be half changed: let it go, and load it again. */
  readonly onPoison: (offer: Offer) => void;
  /** The store has refused an update for good: what is in memory is not what is stored. */
  readonly onVoid: (why: Dismissal) => void;
}

export function createRoom(deps: RoomDeps): Room {
  const { stored, roots, committer, clock, notices, onPoison, onVoid } = deps;
  const { documentId, generation } = stored;
  const members = new Set<Member>();
  /** What each member had for certain when it was last answered. */
  const answered = new WeakMap<Member, Uint8Array>();
  const presence = createPresenceTable<Member>();
  const { doc, prepared, hasGap, take, whole } = openDocument(stored.updates, deps.prepare);
  const owners = new Map(stored.owners.map(({ client, device }) => [client, hexOf(device)]));
  const gate = { doc, roots, ownerOf: (client: number) => owners.get(client) };
  let { size } = stored;
  let over = false;

  const pass = (frame: Uint8Array, author: Member | null, urgency: Urgency) => {
    for (const member of members) if (member !== author) member.send(frame, urgency);
  };
  const voided = (why: Dismissal) => {
    if (over) return;
    over = true;
    onVoid(why);
  };
  const afterCommit = (committed: () => void) =>
    committer.add({ documentId, update: null, committed, voided });
  /** What the document made of it is stored, not the frame, which may hold repetition or junk. */
  const store = (bytes: Uint8Array, author: Member | null, claims: readonly Claim[] = []) => {
    size += bytes.length;
    const at = clock.now();
    committer.add({
      documentId,
      update: { documentId, generation, at, bytes, claims },
      committed() {
        pass(encodeSync(SYNC.update, bytes), author, "news");
        notices.broadcast(clock.now() - at);
      },
      voided,
    });
  };
  for (const bytes of prepared) store(bytes, null);

  const room: Room = {
    ...{ documentId, generation, hasGap, presence },
    people: () => members.size,
    bytes: () => size,
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
      const reply = isEmpty
        ? whole()
        : encodeSync(SYNC.step2, Y.encodeStateAsUpdate(doc, stateVector));
      notices.answered(reply.length);
      answered.set(member, Y.encodeStateVector(doc));
      afterCommit(() => member.send(reply, "must"));
    },
    catchUp(member) {
      const missed = Y.encodeStateAsUpdate(doc, answered.get(member));
      answered.set(member, Y.encodeStateVector(doc));
      afterCommit(() => member.send(encodeSync(SYNC.update, missed), "must"));
    },
    take(offer) {
      const { member, device, update, mayWrite, committed } = offer;
      if (over) return { code: "resync", message: "the document is being loaded again" };
      const verdict = judge(gate, update, device);
      if (!verdict.fit) return verdict;
      const { news, claims } = verdict;
      if (news && !mayWrite) {
        return { code: "role", message: "this role may not change this document" };
      }
      if (news && size + update.length > LIMITS.documentBytes) {
        return { code: "full", message: `the document has reached ${LIMITS.documentBytes} bytes` };
      }
      const emitted = news ? take(update) : [];
      if (emitted === null) {
        over = true;
        onPoison(offer);
        return { code: "damaged", message: "the document could not take the update" };
      }
      for (const client of claims) owners.set(client, device);
      const claimed = claims.map((client) => ({ client, device: Buffer.from(device, "hex") }));
      for (const bytes of emitted) store(bytes, member, claimed);
      afterCommit(committed);
      return null;
    },
    pass,
    dismiss(why) {
      for (const member of members) member.dismiss(why);
    },
    close() {
      doc.destroy();
    },
  };
  return room;
}

function hexOf(device: Uint8Array): string {
  return Buffer.from(device).toString("hex");
}
