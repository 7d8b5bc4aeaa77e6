import type * as Y from "yjs";
import { JOINTS, type PoseMarks } from "../../body";
import { VIEWS } from "../../geometry";
import { MARK_FIELD } from "../fields";
import { markKey } from "../read-panel";
import { requireField } from "../require-field";
import { ORIGIN, panelOf } from "../schema";
import type { PanelId } from "../sheet";

/**
 * Puts many marks on a panel in one edit: a figure, a pull, or all guesses at once. What is not named
 * stays as it is. When two people do so at once each mark keeps the later write, whole; two figures
 * placed at once are one person's, unless they named different joints.
 *
 * Units:   panel units, y down
 * Errors:  SheetError "panel-missing"; RangeError unless every number is finite and may be a mark's, before
 *          anything is written
 */
export function placeMarks(doc: Y.Doc, id: PanelId, marks: PoseMarks): void {
  const placed = VIEWS.flatMap((view) =>
    JOINTS.flatMap((joint) => {
      const mark = marks[view][joint];
      if (mark === undefined) return [];
      const triple: [number, number, number] = [mark.x, mark.y, mark.precision];
      requireField("placeMarks", "marks that are", MARK_FIELD, triple);
      return [{ key: markKey(view, joint), triple }];
    }),
  );
  doc.transact(() => {
    const panel = panelOf(doc, id);
    for (const { key, triple } of placed) panel.set(key, triple);
  }, ORIGIN.hand);
}
