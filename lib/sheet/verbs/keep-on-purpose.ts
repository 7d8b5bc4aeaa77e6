import type * as Y from "yjs";
import type { OnPurpose } from "../../gait";
import { ID_FIELD } from "../fields";
import { requireField } from "../require-field";
import { requireOnPurpose } from "../require-on-purpose";
import { ORIGIN, onPurposeIn } from "../schema";

/**
 * Keeps on purpose what an entry says, or says it anew: one value under the entry's id. Two people who keep
 * the same thing leave two entries, and dropping one leaves the other's; where two reword one entry the
 * later write wins, whole.
 *
 * Errors:  RangeError for what is no entry, before anything is written
 */
export function keepOnPurpose(critique: Y.Doc, { id, ...entry }: OnPurpose): void {
  requireField("keepOnPurpose", "an id of", ID_FIELD, id);
  requireOnPurpose("keepOnPurpose", entry);
  critique.transact(() => {
    onPurposeIn(critique).set(id, entry);
  }, ORIGIN.hand);
}
