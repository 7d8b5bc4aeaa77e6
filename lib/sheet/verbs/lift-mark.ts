import type * as Y from "yjs";
import type { JointName } from "../../body";
import type { View } from "../../geometry";
import { markKey } from "../read-panel";
import { ORIGIN, panelOf } from "../schema";
import type { PanelId } from "../sheet";

/**
 * Takes a joint's mark off one view of a panel. When somebody else places it at the same time, the
 * placing stands.
 *
 * Errors:  SheetError "panel-missing"; a mark that is not there is already lifted
 */
export function liftMark(doc: Y.Doc, id: PanelId, view: View, joint: JointName): void {
  doc.transact(() => {
    panelOf(doc, id).delete(markKey(view, joint));
  }, ORIGIN.hand);
}
