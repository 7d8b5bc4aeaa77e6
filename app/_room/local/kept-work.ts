import type { Change } from "../../../lib/sheet";
import type { DocumentName } from "../../../shared/document-name";
import type { RefusalCode } from "../../../shared/hub-message";

/** The sheet first, so that a sheet's work lies together; then in the order it was done in, page by page. */
export type WorkKey = readonly [sheet: string, at: number, number: number, page: string];

/** Why work cannot be done on the sheet. `shut`: the door is; with another link it may be, later. */
export type LostWhy = RefusalCode | "panel-missing" | "unreadable" | "shut";

/** One thing that was done here and is not known to be on the hub's disk. */
export interface KeptWork {
  readonly key: WorkKey;
  readonly document: DocumentName;
  /** The generation of the document that it was done in. */
  readonly generation: number;
  /** As the document emitted it; null once it is set aside, to be done again in a fresh document. */
  readonly update: Uint8Array | null;
  /** The same as plain values. */
  readonly changes: readonly Change[];
  /** It has been done again once. */
  readonly again: boolean;
  /** Why it could not be done again, and waits to be saved as a file; null while it may still be. */
  readonly lost: LostWhy | null;
}

/** The key as text, for maps. */
export function keyText(key: WorkKey): string {
  return key.join(" ");
}

/** In the order it was done in. */
export function byKey({ key: one }: KeptWork, { key: other }: KeptWork): number {
  return one[1] - other[1] || one[2] - other[2] || (one[3] < other[3] ? -1 : 1);
}
