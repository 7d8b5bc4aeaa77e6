import type * as Y from "yjs";
import { JOINTS } from "../../body";
import { type SwitchedPanel, switchedTravel, type Travel } from "../../gait";
import { packStroke, shapeStroke, UNSHAPED } from "../../ink";
import { HEAD_FIELDS, MARK_FIELD } from "../fields";
import { markKey } from "../read-panel";
import { pictureKey, pictureTuple, readPicture } from "../read-pictures";
import { readStroke } from "../read-stroke";
import { requireField } from "../require-field";
import { headOf, ORIGIN, panelOf, strokesOf } from "../schema";
import type { Panel, Sheet } from "../sheet";
import { walkOf } from "../walk-of";

/**
 * Makes a walk travel or stay on the spot, every drawing staying where it is on the ground (see
 * `switchedTravel`), in one edit. When somebody draws or marks in a panel at the same time, what they do
 * stays where they did it.
 *
 * Errors:  SheetError "panel-missing"; RangeError for what is no travel; nothing is written
 * @param sheet as the document has it
 */
export function setTravel(doc: Y.Doc, sheet: Sheet, travel: Travel): void {
  requireField("setTravel", "a travel that is", HEAD_FIELDS.travel, travel);
  const { advance, panels } = switchedTravel(walkOf(sheet), travel);
  requireField("setTravel", "an advance that is", HEAD_FIELDS.advance, advance);
  doc.transact(() => {
    headOf(doc).set("travel", travel);
    if (advance !== sheet.head.advance) headOf(doc).set("advance", advance);
    for (const panel of sheet.panels) {
      const to = panels.get(panel.id);
      if (to !== undefined) moveAside(doc, panel, to);
    }
  }, ORIGIN.hand);
}

/** Panel units; a drawing that would go further from its paper than it could be kept stays on it. */
const MOST_ASIDE = 100_000;

function moveAside(doc: Y.Doc, panel: Panel, { place, aside }: SwitchedPanel): void {
  const map = panelOf(doc, panel.id);
  if (panel.place !== place) map.set("place", place);
  if (aside === 0 || Math.abs(aside) > MOST_ASIDE) return;
  for (const joint of JOINTS) {
    const triple = map.get(markKey("side", joint));
    if (!MARK_FIELD.fits(triple)) continue;
    const [x, y, precision] = triple;
    map.set(markKey("side", joint), [x + aside, y, precision]);
  }
  const picture = readPicture(map.get(pictureKey("side")));
  if (picture !== null) {
    map.set(pictureKey("side"), [...pictureTuple({ ...picture, x: picture.x + aside })]);
  }
  const shaping = { ...UNSHAPED, by: { x: aside, y: 0 } };
  const strokes = strokesOf(doc);
  for (const { id } of panel.ink.side) {
    const stroke = readStroke(id, strokes.get(id), () => {});
    if (stroke === null) continue;
    const { id: _, ...drawn } = stroke;
    strokes.set(id, packStroke(shapeStroke(drawn, shaping)));
  }
}
