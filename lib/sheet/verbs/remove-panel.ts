import type * as Y from "yjs";
import { ORIGIN, panelOf } from "../schema";
import type { PanelId } from "../sheet";

/**
 * Takes a panel off the strip. It keeps its map, marked `removed`, and its ink: what others do to it
 * meanwhile is kept too, and shows again when the removal is undone. When two remove it, it is back
 * only when the one whose write won undoes.
 *
 * Errors:  SheetError "panel-missing"
 */
export function removePanel(doc: Y.Doc, id: PanelId): void {
  doc.transact(() => {
    panelOf(doc, id).set("removed", true);
  }, ORIGIN.hand);
}
