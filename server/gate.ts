import * as decoding from "lib0/decoding";
import * as Y from "yjs";
import type { RefusalCode } from "../shared/hub-message";
import { foreignPart } from "./gate-content";
import { contradicts } from "./gate-repeats";

/** What came of looking at an update. */
export type Verdict =
  | {
      readonly fit: true;
      /** Whether the document would change by it. */
      readonly news: boolean;
      /** Client ids that nobody owned so far, and that this update writes under. */
      readonly claims: readonly number[];
    }
  | { readonly fit: false; readonly code: RefusalCode; readonly message: string };

/** What an update is held against. */
export interface GateDeps {
  readonly doc: Y.Doc;
  /** The names of the maps that the document has. */
  readonly roots: readonly string[];
  /** Which device writes under a client id, as far as any does. */
  readonly ownerOf: (client: number) => string | undefined;
}

type Decoded = ReturnType<typeof Y.decodeUpdate>;

/**
 * Is this update fit to be applied? It is read to its end first: a truncated one would be applied by
 * half before it throws. One that builds on something the document does not have is refused, for it
 * would be kept aside, cost more with every further one, and never be committed. And so is one that
 * goes on under another device's client id: two writers under one id make documents that differ for
 * ever while they believe to be equal.
 */
export function judge(
  { doc, roots, ownerOf }: GateDeps,
  update: Uint8Array,
  device: string,
): Verdict {
  const decoded = decode(update);
  if (decoded === null) return refuse("damaged", "the update cannot be read to its end");
  if (!isOrderly(decoded, placesIn(update))) {
    return refuse("damaged", "no document writes an update like this");
  }
  for (const struct of decoded.structs) {
    const foreign = foreignPart(struct, roots);
    if (foreign !== null) return refuse("content", `a sheet's document holds ${foreign}`);
  }
  const known = stateAfter(doc, decoded);
  if (known === null || !isGrounded(decoded, known)) {
    return refuse("resync", "the update builds on something the hub does not have");
  }
  const writers = writersIn(doc, decoded);
  const claims = writers.filter((client) => ownerOf(client) === undefined);
  if (writers.some((client) => (ownerOf(client) ?? device) !== device)) {
    return refuse("owner", "the update goes on under another device's client id");
  }
  if (decoded.structs.some((struct) => contradicts(doc, struct))) {
    return refuse("owner", "the update says otherwise what is known under its client id");
  }
  return { fit: true, news: writers.length > 0 || deletesNews(doc, decoded), claims };
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

/**
 * Every struct has a length, and each client has one place in the update. No document writes it otherwise,
 * and the library that applies it relies on it: of a client's places it keeps the last alone, and of two
 * structs that begin at one clock it may find the wrong one.
 */
function isOrderly({ structs }: Decoded, places: number): boolean {
  const clients = structs.map(({ id }) => id.client);
  const runs = clients.filter((client, index) => client !== clients[index - 1]);
  const isOnce = runs.length === places && new Set(runs).size === places;
  return isOnce && structs.every(({ length }) => length > 0);
}

/** How many clients have a place in the update, as its first number says. */
function placesIn(update: Uint8Array): number {
  return decoding.readVarUint(decoding.createDecoder(update));
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

/** Does all that the update refers to exist, in the document or in the update itself, and before it? */
function isGrounded({ structs, ds }: Decoded, known: (client: number) => number): boolean {
  for (const struct of structs) {
    if (!(struct instanceof Y.Item)) continue;
    const { origin, rightOrigin, parent } = struct;
    const { client, clock } = struct.id;
    // An item that stands on itself, or on what its own client says after it, could not be put anywhere.
    const exists = (id: Y.ID | null) =>
      id === null || id.clock < (id.client === client ? clock : known(id.client));
    if (!exists(origin) || !exists(rightOrigin)) return false;
    if (parent instanceof Y.ID && !exists(parent)) return false;
  }
  for (const [client, deletes] of ds.clients) {
    const upTo = known(client);
    if (deletes.some(({ clock, len }) => clock + len > upTo)) return false;
  }
  return true;
}

/** Under which client ids the update says something that the document does not have. */
function writersIn(doc: Y.Doc, { structs }: Decoded): number[] {
  const writers = new Set<number>();
  for (const { id, length } of structs) {
    if (id.clock + length > Y.getState(doc.store, id.client)) writers.add(id.client);
  }
  return [...writers];
}

/** A page's answer to the hub's first question repeats every deletion, old or new: that is no news. */
function deletesNews(doc: Y.Doc, { ds }: Decoded): boolean {
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
