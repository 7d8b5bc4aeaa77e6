import type * as Y from "yjs";
import type { View } from "../../geometry";
import { ORIGIN, panelOf } from "../schema";
import type { PanelId } from "../sheet";
import { inkFollows } from "../to-redraw";

/**
 * Says that a view of a panel needs no redrawing: its ink follows the figure as it is. When somebody moves
 * the figure at the same time, it stays to redraw.
 *
 * Errors:  SheetError "panel-missing"
 */
export function redrawDone(doc: Y.Doc, panel: PanelId, view: View): void {
  doc.transact(() => {
    panelOf(doc, panel);
    inkFollows(doc, [{ panel, view }]);
  }, ORIGIN.hand);
}
