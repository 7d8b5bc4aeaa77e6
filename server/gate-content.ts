import * as Y from "yjs";
import { LIMITS } from "../shared/limits";

type Struct = ReturnType<typeof Y.decodeUpdate>["structs"][number];

/**
 * What a struct brings that a document of ours never holds, in words; null if there is nothing of the
 * kind. What a document may hold is looked at here without asking what it means: anything else would
 * be free storage for a stranger, and a burden for every reader.
 */
export function foreignPart(struct: Struct, roots: readonly string[]): string | null {
  if (!(struct instanceof Y.Item)) return null;
  return foreignPlace(struct, roots) ?? foreignContent(struct.content);
}

/** An item that stands behind another stands where that one does, which was looked at when it came. */
function foreignPlace(
  { parent, parentSub, origin, rightOrigin }: Y.Item,
  roots: readonly string[],
) {
  if (origin !== null || rightOrigin !== null) return null;
  if (typeof parent === "string" && !roots.includes(parent)) return `no map called ${parent}`;
  if (parentSub === null) return "maps alone, and no lists";
  if (parentSub.length > LIMITS.keyLength) return `no name beyond ${LIMITS.keyLength} characters`;
  return null;
}

function foreignContent(content: Y.Item["content"]): string | null {
  if (content instanceof Y.ContentDeleted) return null;
  if (content instanceof Y.ContentBinary) {
    const most = LIMITS.strokeBytes;
    return content.content.length > most ? `no bytes beyond ${most} in one piece` : null;
  }
  if (content instanceof Y.ContentAny) {
    return content.arr.every((value) => isShallow(value, LIMITS.valueDepth))
      ? null
      : `no value deeper than ${LIMITS.valueDepth}`;
  }
  if (content instanceof Y.ContentType) {
    return content.type.constructor === Y.Map ? null : "maps alone, and no lists or texts";
  }
  return "maps, bytes and plain values";
}

function isShallow(value: unknown, depth: number): boolean {
  if (typeof value !== "object" || value === null || value instanceof Uint8Array) return true;
  return depth > 0 && Object.values(value).every((part) => isShallow(part, depth - 1));
}
