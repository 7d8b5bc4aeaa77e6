import type * as Y from "yjs";
import type { Frame } from "../../motion";
import { PANEL_FIELDS } from "../fields";
import { requireField } from "../require-field";
import { headOf, ORIGIN, panelOf } from "../schema";
import type { PanelId } from "../sheet";
import { loopAfterSlide } from "../timing/loop-after";
import { readTimes } from "../timing/times";

/**
 * Slides a panel along the ruler. Order is the frame number, so this writes one number, and the loop where
 * it begins or ends on this panel. Of two people sliding one panel the later write wins.
 *
 * Errors:  SheetError "panel-missing"; RangeError unless the frame is a whole number from 1
 */
export function slidePanel(doc: Y.Doc, id: PanelId, frame: Frame): void {
  requireField("slidePanel", "a frame that is", PANEL_FIELDS.frame, frame);
  doc.transact(() => {
    const panel = panelOf(doc, id);
    const loop = loopAfterSlide(readTimes(doc), id, frame);
    panel.set("frame", frame);
    if (loop !== null) headOf(doc).set("loop", loop);
  }, ORIGIN.hand);
}
