import * as Y from "yjs";
import type { RefusalCode } from "../shared/hub-message";

/** What came of looking at an update. `news` says whether a document would change by it. */
export type Verdict =
  | { readonly fit: true; readonly news: boolean }
  | { readonly fit: false; readonly code: RefusalCode; readonly message: string };

type Decoded = ReturnType<typeof Y.decodeUpdate>;

/**
 * Is this update fit to be applied? It is read to its end first: a truncated one would be applied by
 * half before it throws. One that builds on something the document does not have is refused, for it
 * would be kept aside, cost more with every further one, and never be committed.
 */
export function judge(doc: Y.Doc, update: Uint8Array): Verdict {
  const decoded = decode(update);
  if (decoded === null) return refuse("damaged", "the update cannot be read to its end");
  if (decoded.structs.some(isForeign)) {
    return refuse("content", "a sheet holds no documents within the document");
  }
  const known = stateAfter(doc, decoded);
  if (known === null || !isGrounded(decoded, known)) {
    return refuse("resync", "the update builds on something the hub does not have");
  }
  return { fit: true, news: hasNews(doc, decoded) };
}

function refuse(code: RefusalCode, message: string): Verdict {
  return { fit: false, code, message };
}

function decode(update: Uint8Array): Decoded | null {
  try {
    return Y.decodeUpdate(update);
  } catch {
    return null;
  }
}

function isForeign(struct: Decoded["structs"][number]): boolean {
  return struct instanceof Y.Item && struct.content instanceof Y.ContentDoc;
}

/** How far every client would be known afterwards; null where a client's clocks leave a gap. */
function stateAfter(doc: Y.Doc, { structs }: Decoded): ((client: number) => number) | null {
  const known = new Map<number, number>();
  for (const struct of structs) {
    const { client, clock } = struct.id;
    const upTo = known.get(client) ?? Y.getState(doc.store, client);
    if (struct instanceof Y.Skip || clock > upTo) return null;
    known.set(client, Math.max(upTo, clock + struct.length));
  }
  return (client) => known.get(client) ?? Y.getState(doc.store, client);
}

/** Does all that the update refers to exist, in the document or in the update itself? */
function isGrounded({ structs, ds }: Decoded, known: (client: number) => number): boolean {
  const exists = (id: Y.ID | null) => id === null || id.clock < known(id.client);
  for (const struct of structs) {
    if (!(struct instanceof Y.Item)) continue;
    if (!exists(struct.origin) || !exists(struct.rightOrigin)) return false;
    if (struct.parent instanceof Y.ID && !exists(struct.parent)) return false;
  }
  for (const [client, deletes] of ds.clients) {
    const upTo = known(client);
    if (deletes.some(({ clock, len }) => clock + len > upTo)) return false;
  }
  return true;
}

/** A page's answer to the hub's first question repeats every deletion, old or new: that is no news. */
function hasNews(doc: Y.Doc, { structs, ds }: Decoded): boolean {
  const fresh = structs.some(
    ({ id, length }) => id.clock + length > Y.getState(doc.store, id.client),
  );
  if (fresh) return true;
  for (const [client, deletes] of ds.clients) {
    const stored = doc.store.clients.get(client) ?? [];
    for (const { clock, len } of deletes) {
      if (!isDeleted(stored, clock, clock + len)) return true;
    }
  }
  return false;
}

function isDeleted(stored: readonly (Y.GC | Y.Item)[], from: number, to: number): boolean {
  for (let clock = from; clock < to; ) {
    const struct = stored[Y.findIndexSS(stored as (Y.GC | Y.Item)[], clock)];
    if (struct === undefined || !struct.deleted) return false;
    clock = struct.id.clock + struct.length;
  }
  return true;
}
