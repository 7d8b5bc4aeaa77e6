import type * as Y from "yjs";
import { PANEL_FIELDS } from "../fields";
import { requireField } from "../require-field";
import { ORIGIN, panelOf } from "../schema";
import type { Panel, PanelId } from "../sheet";

/**
 * Says which pose a panel shows and whose weight it is. When two relabel one panel, each of the two
 * fields keeps the later write.
 *
 * Errors:  SheetError "panel-missing"; RangeError for a pose or side that is none
 */
export function relabelPanel(
  doc: Y.Doc,
  id: PanelId,
  { pose, weightOn }: Pick<Panel, "pose" | "weightOn">,
): void {
  requireField("relabelPanel", "a pose that is", PANEL_FIELDS.pose, pose);
  requireField("relabelPanel", "weight on", PANEL_FIELDS.weightOn, weightOn);
  doc.transact(() => {
    const map = panelOf(doc, id);
    if (map.get("pose") !== pose) map.set("pose", pose);
    if (map.get("weightOn") !== weightOn) map.set("weightOn", weightOn);
  }, ORIGIN.hand);
}
