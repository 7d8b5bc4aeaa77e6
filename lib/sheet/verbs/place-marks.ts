import type * as Y from "yjs";
import { JOINTS, type PoseMarks } from "../../body";
import { VIEWS } from "../../geometry";
import { MARK_FIELD } from "../fields";
import { markKey } from "../read-panel";
import { requireField } from "../require-field";
import { ORIGIN, panelOf } from "../schema";
import type { PanelId } from "../sheet";
import { leaveToRedraw } from "../to-redraw";

export interface PlacingMarks {
  /**
   * The figure goes elsewhere than its ink: views with ink whose marks are placed are to redraw. Left out
   * where the marks are put onto the ink that is there.
   */
  readonly leavesInk?: boolean;
}

/**
 * Puts many marks on a panel in one edit: a figure, a pull, or all guesses at once. What is not named
 * stays as it is. When two people do so at once each mark keeps the later write, whole; two figures
 * placed at once are one person's, unless they named different joints.
 *
 * Units:   panel units, y down
 * Errors:  SheetError "panel-missing"; RangeError unless every number is finite and may be a mark's, before
 *          anything is written
 */
export function placeMarks(
  doc: Y.Doc,
  id: PanelId,
  marks: PoseMarks,
  { leavesInk = false }: PlacingMarks = {},
): void {
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
    const left = VIEWS.filter((view) => leavesInk && Object.keys(marks[view]).length > 0);
    leaveToRedraw(doc, id, left);
  }, ORIGIN.hand);
}
