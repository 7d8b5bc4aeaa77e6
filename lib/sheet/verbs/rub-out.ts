import type * as Y from "yjs";
import { ORIGIN, strokesOf } from "../schema";
import type { StrokeId } from "../sheet";
import { inkFollows, papersOf } from "../to-redraw";

/**
 * Rubs out whole strokes, all in one step. When two rub out the same stroke and both undo, it is back
 * once. A stroke that is not there any more is already rubbed out.
 */
export function rubOut(doc: Y.Doc, ids: Iterable<StrokeId>): void {
  const rubbed = [...ids];
  doc.transact(() => {
    inkFollows(doc, papersOf(doc, rubbed));
    for (const id of rubbed) strokesOf(doc).delete(id);
  }, ORIGIN.hand);
}
