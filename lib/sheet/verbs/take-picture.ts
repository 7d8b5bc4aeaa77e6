import type * as Y from "yjs";
import type { View } from "../../geometry";
import { pictureKey } from "../read-pictures";
import { ORIGIN, panelOf } from "../schema";
import type { PanelId } from "../sheet";

/**
 * Takes the picture from under a view. Its bytes stay with the hub, so undo brings it back. When
 * somebody else moves it or puts another at the same time, that stands.
 *
 * Errors:  SheetError "panel-missing"; a picture that is not there is already taken
 */
export function takePicture(doc: Y.Doc, id: PanelId, view: View): void {
  doc.transact(() => {
    panelOf(doc, id).delete(pictureKey(view));
  }, ORIGIN.hand);
}
