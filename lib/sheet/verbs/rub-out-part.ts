import type * as Y from "yjs";
import { packStroke, type Stroke } from "../../ink";
import { ID_FIELD } from "../fields";
import { requireField } from "../require-field";
import { ORIGIN, strokesOf } from "../schema";
import type { StrokeId } from "../sheet";
import { inkFollows, papersOf } from "../to-redraw";

/**
 * Leaves of each stroke the pieces that were not rubbed out, all in one edit: the first under the
 * stroke's own id, the others under new ones, none at all takes it away. When two rub at one stroke at
 * once, the first piece is the later writer's and every further piece stays: nothing that either
 * wanted kept is lost, and what is doubled can be rubbed again.
 *
 * Errors:  RangeError for pieces that are no strokes, or an id that is none; a stroke that is not
 *          there any more stays away, with its pieces
 */
export function rubOutPart(
  doc: Y.Doc,
  pieces: ReadonlyMap<StrokeId, readonly Stroke[]>,
  newId: () => StrokeId,
): void {
  const strokes = strokesOf(doc);
  const left = [...pieces]
    .filter(([id]) => strokes.has(id))
    .map(([id, parts]) => ({
      id,
      parts: parts.map((part, n) => ({ id: n === 0 ? id : newId(), bytes: packStroke(part) })),
    }));
  for (const { parts } of left) {
    for (const part of parts) requireField("rubOutPart", "an id of", ID_FIELD, part.id);
  }
  const papers = papersOf(
    doc,
    left.map(({ id }) => id),
  );
  doc.transact(() => {
    inkFollows(doc, papers);
    for (const { id, parts } of left) {
      if (parts.length === 0) strokes.delete(id);
      for (const part of parts) strokes.set(part.id, part.bytes);
    }
  }, ORIGIN.hand);
}
