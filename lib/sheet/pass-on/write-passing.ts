import type * as Y from "yjs";
import { JOINTS } from "../../body";
import { VIEWS, type View } from "../../geometry";
import { packStroke } from "../../ink";
import { ID_FIELD, MARK_FIELD } from "../fields";
import { markKey } from "../read-panel";
import { requireField } from "../require-field";
import { ORIGIN, panelOf, strokesOf } from "../schema";
import type { StrokeId } from "../sheet";
import { inkFollows, leaveToRedraw } from "../to-redraw";
import type { Passing, PassOn } from "./passing";

/**
 * Writes what was passed on, in one transaction; what cannot be passed on writes nothing. A view with ink
 * whose marks moved without it is to redraw.
 *
 * Errors:  SheetError "panel-missing"; RangeError for a mark or stroke that is none, before anything
 *          is written
 * @param newId an id for each stroke that comes along
 */
export function writePassing(doc: Y.Doc, given: PassOn, newId: () => StrokeId): void {
  if (given.kind !== "passing") return;
  const { to, marks, ink } = given;
  const strokes = ink.map((stroke) => ({ id: newId(), bytes: packStroke(stroke) }));
  for (const { id } of strokes) requireField("passing on", "an id of", ID_FIELD, id);
  const changes = VIEWS.flatMap((view) =>
    JOINTS.flatMap((joint) => {
      const mark = marks[view][joint];
      if (mark === undefined) return [];
      const triple = mark === null ? null : ([mark.x, mark.y, mark.precision] as const);
      if (triple !== null) requireField("passing on", "a mark that is", MARK_FIELD, triple);
      return [{ key: markKey(view, joint), triple }];
    }),
  );
  doc.transact(() => {
    const panel = panelOf(doc, to);
    for (const { key, triple } of changes) {
      if (triple === null) panel.delete(key);
      else panel.set(key, [...triple]);
    }
    for (const { id, bytes } of strokes) strokesOf(doc).set(id, bytes);
    inkFollows(doc, ink);
    leaveToRedraw(doc, to, movedViews(given));
  }, ORIGIN.hand);
}

/** Views that get marks and no ink to go with them. */
function movedViews({ marks, ink }: Passing): readonly View[] {
  return VIEWS.filter(
    (view) =>
      Object.values(marks[view]).some((mark) => mark !== null) &&
      ink.every((stroke) => stroke.view !== view),
  );
}
