import * as Y from "yjs";
import { JOINTS } from "../body";
import type { OnPurpose } from "../gait";
import { VIEWS } from "../geometry";
import { packStroke } from "../ink";
import { markKey } from "./read-panel";
import { pictureKey, pictureTuple } from "./read-pictures";
import { requireOnPurpose } from "./require-on-purpose";
import { CRITIQUE, headOf, ORIGIN, onPurposeIn, panelsOf, SCHEMA, strokesOf } from "./schema";
import type { Panel, Sheet } from "./sheet";
import { redrawKey } from "./to-redraw";

/**
 * Fills an empty drawing document with a sheet: laid out, an example, or read from a file. Done once,
 * where the sheet is made; nobody can undo it. Two that did it to one document would mix two sheets.
 *
 * Errors:  RangeError for what is no sheet (see `packStroke`)
 */
export function writeSheet(doc: Y.Doc, sheet: Sheet): void {
  doc.transact(() => {
    const head = headOf(doc);
    head.set("schema", SCHEMA);
    for (const [name, value] of Object.entries(sheet.head)) head.set(name, value);
    for (const panel of sheet.panels) {
      panelsOf(doc).set(panel.id, panelMap(panel));
      for (const stroke of VIEWS.flatMap((view) => panel.ink[view])) {
        strokesOf(doc).set(stroke.id, packStroke(stroke));
      }
    }
  }, ORIGIN.ground);
}

/**
 * Prepares an empty critique document: it carries its schema, and what a handed-over sheet already keeps
 * on purpose. Nobody can undo it.
 *
 * Errors:  RangeError for what is no entry, before anything is written
 */
export function prepareCritique(doc: Y.Doc, onPurpose: readonly OnPurpose[] = []): void {
  for (const { id: _, ...entry } of onPurpose) requireOnPurpose("prepareCritique", entry);
  doc.transact(() => {
    doc.getMap(CRITIQUE.sheet).set("schema", SCHEMA);
    for (const { id, ...entry } of onPurpose) onPurposeIn(doc).set(id, entry);
  }, ORIGIN.ground);
}

/** A panel's map, with its marks and pictures, ready to be put into the document. */
export function panelMap(panel: Omit<Panel, "id" | "ink">): Y.Map<unknown> {
  const { frame, hold, pose, weightOn, place, marks, toRedraw, pictures } = panel;
  const map = new Y.Map<unknown>(Object.entries({ frame, hold, pose, weightOn, place }));
  for (const view of VIEWS) {
    if (toRedraw[view]) map.set(redrawKey(view), true);
    const picture = pictures[view];
    if (picture !== null) map.set(pictureKey(view), pictureTuple(picture));
    for (const joint of JOINTS) {
      const mark = marks[view][joint];
      if (mark !== undefined) map.set(markKey(view, joint), [mark.x, mark.y, mark.precision]);
    }
  }
  return map;
}
