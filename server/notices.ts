import type { RefusalCode } from "../shared/hub-message";
import type { Commit } from "./committer";
import type { Done } from "./compactor";
import type { Visitor } from "./connection";

/** What happens in the hub, for whoever counts it or writes it down. Nothing depends on it. */
export interface Notices {
  updateTaken(): void;
  refused(code: RefusalCode, by: Visitor): void;
  committed(commit: Commit): void;
  /** An update passed the gate and left a document unsound. */
  poisoned(device: string): void;
  /** What is stored of a document has a gap. */
  gap(documentId: number): void;
  /** So many of a document's snapshots are not what was written; an older one, or every update, stands in. */
  snapshotsDamaged(documentId: number, count: number): void;
  compacted(done: Done): void;
  joined(ms: number): void;
  /** So long after an update had come, it was handed to everybody else. */
  broadcast(ms: number): void;
  /** A page that asked what it lacks was answered with so many bytes. */
  answered(bytes: number): void;
  awarenessPassed(): void;
  /** Something newer took the place of what waited to be passed on. */
  coalesced(what: "awareness" | "live"): void;
  caughtUp(): void;
  slowReaderClosed(): void;
  /** Something that should not fail did; whatever else was to be done goes on. */
  fault(where: string, error: unknown): void;
}

export const NO_NOTICES: Notices = {
  updateTaken: () => {},
  refused: () => {},
  committed: () => {},
  poisoned: () => {},
  gap: () => {},
  snapshotsDamaged: () => {},
  compacted: () => {},
  joined: () => {},
  broadcast: () => {},
  answered: () => {},
  awarenessPassed: () => {},
  coalesced: () => {},
  caughtUp: () => {},
  slowReaderClosed: () => {},
  fault: () => {},
};
