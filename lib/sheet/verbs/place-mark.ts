import type * as Y from "yjs";
import type { JointName, Mark } from "../../body";
import type { View } from "../../geometry";
import { MARK_FIELD } from "../fields";
import { markKey } from "../read-panel";
import { requireField } from "../require-field";
import { ORIGIN, panelOf } from "../schema";
import type { PanelId } from "../sheet";

/**
 * Puts a joint's mark in one view of a panel, or moves it. When two people place the same mark the later
 * write wins, whole: a mark is stored as one value, so its x and y never part in a merge.
 *
 * Units:   panel units, y down
 * Errors:  SheetError "panel-missing"; RangeError unless all three numbers are finite
 */
export function placeMark(
  doc: Y.Doc,
  id: PanelId,
  view: View,
  joint: JointName,
  { x, y, precision }: Mark,
): void {
  requireField("placeMark", "a mark that is", MARK_FIELD, [x, y, precision]);
  doc.transact(() => {
    panelOf(doc, id).set(markKey(view, joint), [x, y, precision]);
  }, ORIGIN.hand);
}
