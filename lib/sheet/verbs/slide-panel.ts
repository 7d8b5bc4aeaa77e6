import type * as Y from "yjs";
import type { Frame } from "../../motion";
import { PANEL_FIELDS } from "../fields";
import { requireField } from "../require-field";
import { ORIGIN, panelOf } from "../schema";
import type { PanelId } from "../sheet";

/**
 * Slides a panel along the ruler. Order is the frame number, so this writes one number; of two people
 * sliding one panel the later write wins.
 *
 * Errors:  SheetError "panel-missing"; RangeError unless the frame is a whole number from 1
 */
export function slidePanel(doc: Y.Doc, id: PanelId, frame: Frame): void {
  requireField("slidePanel", "a frame that is", PANEL_FIELDS.frame, frame);
  doc.transact(() => {
    panelOf(doc, id).set("frame", frame);
  }, ORIGIN.hand);
}
