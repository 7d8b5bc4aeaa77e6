import type * as Y from "yjs";
import { ORIGIN, onPurposeIn } from "../schema";

/**
 * No longer keeps on purpose what an entry says: its remarks are told again. When somebody words it anew at
 * the same time, the wording stands; one that is not there any more is already dropped.
 */
export function dropOnPurpose(critique: Y.Doc, id: string): void {
  critique.transact(() => {
    onPurposeIn(critique).delete(id);
  }, ORIGIN.hand);
}
