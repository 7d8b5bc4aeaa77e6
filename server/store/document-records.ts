/** A document as the database has it. */
export interface StoredDocument {
  readonly documentId: number;
  readonly generation: number;
  /** The number of the newest update. */
  readonly head: number;
  /** Bytes of all of `updates` together. */
  readonly size: number;
  /** All that makes the document, to be applied in this order: a snapshot, if there is one, and what came after. */
  readonly updates: readonly Uint8Array[];
  /** Which device a Yjs client id belongs to in this document. */
  readonly owners: readonly Claim[];
  /** How many snapshots could not be used because their bytes are not what was written. */
  readonly damagedSnapshots: number;
}

/** The first device that writes under a client id has it for good, in that document. */
export interface Claim {
  readonly client: number;
  readonly device: Uint8Array;
}

/** What goes to the disk in one commit. */
export interface NewBatch {
  /** Unlike that of any other batch; the same when this one is tried again. */
  readonly id: string;
  readonly updates: readonly NewUpdate[];
}

export interface NewUpdate {
  readonly documentId: number;
  /** The one the room was loaded with. */
  readonly generation: number;
  readonly at: number;
  readonly bytes: Uint8Array;
  /** Client ids that are written under for the first time. */
  readonly claims?: readonly Claim[];
}

export interface Appended {
  readonly stored: readonly DocumentTail[];
  readonly refused: readonly RefusedUpdates[];
}

/** How a document stands after a commit. */
export interface DocumentTail {
  readonly documentId: number;
  readonly head: number;
  /** Bytes of its newest snapshot and of all updates after it. */
  readonly size: number;
  /** How many updates came after the newest snapshot, and their bytes. */
  readonly tailRows: number;
  readonly tailBytes: number;
}

/** None of what the batch held for this document under this generation is stored, and never will be. */
export interface RefusedUpdates {
  readonly documentId: number;
  readonly generation: number;
  readonly reason: "generation-changed" | "claimed-by-another";
}
