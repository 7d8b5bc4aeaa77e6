import type * as Y from "yjs";
import { PANEL_FIELDS } from "../fields";
import { requireField } from "../require-field";
import { ORIGIN, panelOf } from "../schema";
import type { PanelId } from "../sheet";

/**
 * Says which stretch of ground a panel looks at; null lets it follow from the advance again. Of two
 * people doing so the later write wins.
 *
 * Units:   ground x of the panel's middle, leg lengths
 * Errors:  SheetError "panel-missing"; RangeError unless the place is a finite number or null
 */
export function setPlace(doc: Y.Doc, id: PanelId, place: number | null): void {
  requireField("setPlace", "a place that is", PANEL_FIELDS.place, place);
  doc.transact(() => {
    panelOf(doc, id).set("place", place);
  }, ORIGIN.hand);
}
