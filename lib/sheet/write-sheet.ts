import * as Y from "yjs";
import { JOINTS } from "../body";
import { VIEWS } from "../geometry";
import { packStroke } from "../ink";
import { markKey } from "./read-panel";
import { CRITIQUE, headOf, ORIGIN, panelsOf, SCHEMA, strokesOf } from "./schema";
import type { Panel, Sheet } from "./sheet";

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

/** Prepares an empty critique document: it carries its schema, and nothing was said yet. */
export function prepareCritique(doc: Y.Doc): void {
  doc.transact(() => {
    doc.getMap(CRITIQUE.sheet).set("schema", SCHEMA);
  }, ORIGIN.ground);
}

/** A panel's map, with its marks, ready to be put into the document. */
export function panelMap(panel: Omit<Panel, "id" | "ink">): Y.Map<unknown> {
  const { frame, hold, pose, weightOn, place, marks } = panel;
  const map = new Y.Map<unknown>(Object.entries({ frame, hold, pose, weightOn, place }));
  for (const view of VIEWS) {
    for (const joint of JOINTS) {
      const mark = marks[view][joint];
      if (mark !== undefined) map.set(markKey(view, joint), [mark.x, mark.y, mark.precision]);
    }
  }
  return map;
}
