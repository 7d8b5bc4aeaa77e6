import type * as Y from "yjs";
import type { View } from "../../geometry";
import { PICTURE_FIELD } from "../fields";
import { pictureKey, pictureTuple } from "../read-pictures";
import { requireField } from "../require-field";
import { ORIGIN, panelOf } from "../schema";
import type { PanelId, PictureUnder } from "../sheet";

/**
 * Puts a picture under a view of these panels, in one edit, instead of what lay there. The picture's
 * bytes are with the hub before it is put. Of two people doing so to one view the later write wins,
 * picture and place together.
 *
 * Units:   panel units, y down
 * Errors:  SheetError "panel-missing", and no panel has it; RangeError unless it is a picture's id with
 *          finite numbers, of a size that can be seen
 */
export function putPicture(
  doc: Y.Doc,
  ids: readonly PanelId[],
  view: View,
  picture: PictureUnder,
): void {
  const value = pictureTuple(picture);
  requireField("putPicture", "a picture that is", PICTURE_FIELD, value);
  doc.transact(() => {
    const panels = ids.map((id) => panelOf(doc, id)); // all found before any is written
    for (const panel of panels) panel.set(pictureKey(view), [...value]);
  }, ORIGIN.hand);
}
