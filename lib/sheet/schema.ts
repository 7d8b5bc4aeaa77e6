import * as Y from "yjs";
import type { PanelId } from "./sheet";
import { SheetError } from "./sheet-error";

/** The version of the documents' layout. Both carry it, under `schema` in their `sheet` map. */
export const SCHEMA = 1;

/**
 * Where a transaction comes from. `hand`: this person did it through a verb, and can undo it.
 * `ground`: a sheet was laid out or read from a file; nobody's to undo.
 */
export const ORIGIN = { hand: { from: "hand" }, ground: { from: "ground" } } as const;

/** The parts of a drawing document: head by name, panels by id, packed strokes by id. */
export const DRAWING = { sheet: "sheet", panels: "panels", strokes: "strokes" } as const;

/** The parts of a critique document. Draw-over strokes are packed like the drawing's. */
export const CRITIQUE = {
  sheet: "sheet",
  notes: "notes",
  strokes: "strokes",
  onPurpose: "on-purpose",
  verdicts: "verdicts",
} as const;

export const headOf = (doc: Y.Doc): Y.Map<unknown> => doc.getMap(DRAWING.sheet);
export const panelsOf = (doc: Y.Doc): Y.Map<unknown> => doc.getMap(DRAWING.panels);
export const strokesOf = (doc: Y.Doc): Y.Map<unknown> => doc.getMap(DRAWING.strokes);
export const onPurposeIn = (critique: Y.Doc): Y.Map<unknown> => critique.getMap(CRITIQUE.onPurpose);

/** A panel's own map, also of one that was removed. Errors: SheetError "panel-missing". */
export function panelOf(doc: Y.Doc, id: PanelId): Y.Map<unknown> {
  const map = panelsOf(doc).get(id);
  if (!isMap(map)) throw new SheetError("panel-missing", `no panel ${id} on this sheet`);
  return map;
}

/** Whether a value of the document is a nested map. */
export function isMap(value: unknown): value is Y.Map<unknown> {
  return value instanceof Y.Map;
}
