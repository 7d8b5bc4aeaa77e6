import * as Y from "yjs";
import { isRecord } from "../field";
import { ID_FIELD } from "../fields";
import { emptyPanel } from "../lay-out";
import { readCritique } from "../read-critique";
import { readSheet } from "../read-sheet";
import { readStroke } from "../read-stroke";
import { DRAWING, ORIGIN, panelsOf } from "../schema";
import type { HandedSheet } from "../sheet";
import { doAgain } from "../verbs/do-again";
import { panelMap, prepareCritique, writeSheet } from "../write-sheet";
import type { Change } from "./change";

export interface SetAsideWork {
  readonly drawing: readonly Change[];
  readonly critique: readonly Change[];
}

/**
 * A sheet with work that it could not take, to be saved as a file: so nothing is lost that was drawn. What was
 * drawn in panels that the sheet does not have any more hangs in panels of its own, behind the others.
 *
 * Errors:  RangeError for what is no sheet (see `writeSheet`)
 */
export function handOverChanges(sheet: HandedSheet, work: SetAsideWork): HandedSheet {
  const drawing = new Y.Doc();
  const critique = new Y.Doc();
  writeSheet(drawing, sheet);
  prepareCritique(critique, sheet.onPurpose);
  hangMissing(drawing, work.drawing);
  doAgain(drawing, "drawing", work.drawing);
  doAgain(critique, "critique", work.critique);
  const handed = { ...readSheet(drawing), ...readCritique(critique) };
  drawing.destroy();
  critique.destroy();
  return handed;
}

function hangMissing(doc: Y.Doc, changes: readonly Change[]): void {
  const panels = panelsOf(doc);
  const hung = changes.filter(({ part, panel }) => part === DRAWING.panels && panel === null);
  const isHung = new Set(hung.filter(({ value }) => isRecord(value)).map(({ key }) => key));
  const last = Math.max(0, ...readSheet(doc).panels.map(({ frame }) => frame));
  const missing = new Set(changes.flatMap(panelOfChange)).values();
  doc.transact(() => {
    let frame = last;
    for (const id of missing) {
      if (panels.has(id) || isHung.has(id) || !ID_FIELD.fits(id)) continue;
      const panel = emptyPanel({ id, frame: ++frame, pose: "breakdown", weightOn: null });
      panels.set(id, panelMap(panel));
    }
  }, ORIGIN.ground);
}

/** The panel that something is put into; none for what is taken away, or put elsewhere. */
function panelOfChange({ part, panel, key, value }: Change): readonly string[] {
  if (value === undefined || (panel !== null && key === "removed")) return [];
  if (part === DRAWING.panels) return panel === null ? [] : [panel];
  if (part !== DRAWING.strokes) return [];
  const stroke = readStroke(key, value, () => {});
  return stroke === null ? [] : [stroke.panel];
}
