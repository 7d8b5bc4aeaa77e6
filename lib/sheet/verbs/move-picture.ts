import type * as Y from "yjs";
import type { View } from "../../geometry";
import { PICTURE_FIELD } from "../fields";
import { pictureKey, pictureTuple, readPicture } from "../read-pictures";
import { requireField } from "../require-field";
import { ORIGIN, panelOf } from "../schema";
import type { PanelId, PicturePlace } from "../sheet";

/**
 * Moves, sizes or dims the picture under a view. What is not given stays. When two do so at once the
 * later write wins, whole: place and dimming are one value. When somebody else takes the picture away
 * or puts another at the same time, one of the two writes wins, and no mixture of them.
 *
 * Units:   panel units, y down; dim is a share
 * Errors:  SheetError "panel-missing"; RangeError unless the numbers are finite, of a size that can be
 *          seen. Where no picture lies there is nothing to move, and nothing is written.
 */
export function movePicture(
  doc: Y.Doc,
  id: PanelId,
  view: View,
  place: Partial<PicturePlace>,
): void {
  doc.transact(() => {
    const panel = panelOf(doc, id);
    const before = readPicture(panel.get(pictureKey(view)));
    if (before === null) return;
    const value = pictureTuple({ ...before, ...place });
    requireField("movePicture", "a picture that is", PICTURE_FIELD, value);
    panel.set(pictureKey(view), [...value]);
  }, ORIGIN.hand);
}
