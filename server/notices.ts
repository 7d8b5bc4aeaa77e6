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
  compacted(done: Done): void;
  joined(ms: number): void;
  awarenessPassed(): void;
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
  compacted: () => {},
  joined: () => {},
  awarenessPassed: () => {},
  caughtUp: () => {},
  slowReaderClosed: () => {},
  fault: () => {},
};
