import type * as Y from "yjs";
import { isMap } from "../schema";
import type { Change } from "./change";

/** What a transaction changed, as plain values as they stand after it. */
export function changesIn({ doc, changed }: Y.Transaction): readonly Change[] {
  const parts = new Map<unknown, string>([...doc.share].map(([name, type]) => [type, name]));
  return [...changed].flatMap(([type, keys]) => {
    if (!isMap(type)) return []; // documents hold maps alone
    const place = placeOf(type, parts);
    if (place === null) return [];
    return [...keys]
      .filter((key) => key !== null)
      .map((key): Change => ({ ...place, key, value: plain(type.get(key)) }));
  });
}

/** Where a map stands; null for one that was taken out of the document. */
function placeOf(
  map: Y.Map<unknown>,
  parts: ReadonlyMap<unknown, string>,
): Pick<Change, "part" | "panel"> | null {
  const part = parts.get(map);
  if (part !== undefined) return { part, panel: null };
  const above = parts.get(map.parent);
  const panel = map._item?.parentSub ?? null;
  return above === undefined || panel === null ? null : { part: above, panel };
}

function plain(value: unknown): unknown {
  return isMap(value) ? Object.fromEntries(value.entries()) : value;
}
