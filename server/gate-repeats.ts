import { isDeepStrictEqual } from "node:util";
import * as Y from "yjs";

type Struct = ReturnType<typeof Y.decodeUpdate>["structs"][number];

/**
 * Does the update say something else at a place in a client's sequence that the document has already?
 * Two that write under one client id, say one browser's page and its copy, would each believe the other's
 * strokes to be their own, and the one who comes second would have called saved what is nowhere.
 * What was deleted since cannot be compared any more, and need not be.
 */
export function contradicts({ store }: Y.Doc, struct: Struct): boolean {
  if (!(struct instanceof Y.Item) || struct.content instanceof Y.ContentDeleted) return false;
  const { client, clock } = struct.id;
  const stored = store.clients.get(client) ?? [];
  const end = Math.min(clock + struct.length, Y.getState(store, client));
  for (let at = clock; at < end; ) {
    const held = stored[Y.findIndexSS(stored, at)];
    if (held === undefined) return true;
    const upTo = Math.min(end, held.id.clock + held.length);
    if (held instanceof Y.Item && !held.deleted && !agree(struct, held, { from: at, to: upTo })) {
      return true;
    }
    at = upTo;
  }
  return false;
}

interface Span {
  readonly from: number;
  readonly to: number;
}

function agree(said: Y.Item, held: Y.Item, { from, to }: Span): boolean {
  if (said.parentSub !== null && said.parentSub !== held.parentSub) return false;
  if (said.id.clock === held.id.clock && !Y.compareIDs(said.origin, held.origin)) return false;
  const part = (item: Y.Item) => piece(item.content, from - item.id.clock, to - item.id.clock);
  return isDeepStrictEqual(part(said), part(held));
}

/** What a content says within a span of it, in a form that can be compared. */
function piece(content: Y.Item["content"], from: number, to: number): unknown {
  if (content instanceof Y.ContentAny) return content.arr.slice(from, to);
  if (content instanceof Y.ContentBinary) return content.content;
  return content instanceof Y.ContentType ? content.type.constructor : content.constructor;
}
