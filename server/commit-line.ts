import { randomBytes } from "node:crypto";
import { HUB_LIMITS } from "../shared/limits";
import type { Dismissal } from "./room";
import type { NewUpdate } from "./store/document-records";

/** Work in line for the disk. Without an update it only waits for what stands before it. */
export interface Entry {
  readonly documentId: number;
  readonly update: NewUpdate | null;
  /** Called once everything of the document up to and with this entry is committed, in order. */
  readonly committed: () => void;
  /** Called instead when the store refused it for good: nothing of the batch's is stored of the document. */
  readonly voided: (why: Dismissal) => void;
}

/** What goes to the disk together, under a name that it keeps however often it is tried. */
export interface Batch {
  readonly id: string;
  readonly entries: readonly Entry[];
}

export function newBatchId(): string {
  return randomBytes(9).toString("base64url");
}

/** How many of the line go into one commit: bounded in number and in bytes, but at least one. */
export function batchLength(line: readonly { readonly update: NewUpdate | null }[]): number {
  let bytes = 0;
  let count = 0;
  for (const { update } of line) {
    bytes += update?.bytes.length ?? 0;
    if (count > 0 && (bytes > HUB_LIMITS.batchBytes || count >= HUB_LIMITS.batchUpdates)) break;
    count++;
  }
  return count;
}
