import type * as Y from "yjs";
import { PANEL_FIELDS } from "../fields";
import { requireField } from "../require-field";
import { ORIGIN, panelOf } from "../schema";
import type { PanelId } from "../sheet";

/**
 * Says how long a pose is kept beyond its exposure. Of two people doing so the later write wins.
 *
 * Units:   frames; 0 for none
 * Errors:  SheetError "panel-missing"; RangeError unless the hold is a whole number from 0 to 10,000
 */
export function setHold(doc: Y.Doc, id: PanelId, hold: number): void {
  requireField("setHold", "a hold that is", PANEL_FIELDS.hold, hold);
  doc.transact(() => {
    panelOf(doc, id).set("hold", hold);
  }, ORIGIN.hand);
}
