import type * as Y from "yjs";
import type { View } from "../geometry";
import { byFrame, byHeight } from "./order";
import { readHead } from "./read-head";
import { readPanel } from "./read-panel";
import { readStroke } from "./read-stroke";
import { panelsOf, strokesOf } from "./schema";
import type { InkStroke, Panel, Sheet } from "./sheet";

/** A sheet, and what of its document could not be read: head fields, panels, marks, strokes by name. */
export interface SheetReading {
  readonly sheet: Sheet;
  readonly skipped: readonly string[];
}

/**
 * The whole sheet as plain values. What cannot be read is left out and never stops the rest. The strokes
 * of panels that are not on the strip stay in the document and are not shown.
 */
export function readSheet(doc: Y.Doc): Sheet {
  return readSheetCounting(doc).sheet;
}

/** `readSheet`, and the names of what was left out. */
export function readSheetCounting(doc: Y.Doc): SheetReading {
  const skipped: string[] = [];
  const skip = (place: string): void => {
    skipped.push(place);
  };
  const head = readHead(doc, skip);
  const ink = inkByPanel(doc, skip);
  const panels: Panel[] = [];
  panelsOf(doc).forEach((map, id) => {
    const panel = readPanel(id, map, skip);
    if (panel !== null) panels.push({ ...panel, ink: ink.get(id) ?? { side: [], front: [] } });
  });
  return { sheet: { head, panels: panels.sort(byFrame) }, skipped: skipped.sort() };
}

function inkByPanel(
  doc: Y.Doc,
  skip: (place: string) => void,
): ReadonlyMap<string, Record<View, InkStroke[]>> {
  const strokes: InkStroke[] = [];
  strokesOf(doc).forEach((bytes, id) => {
    const stroke = readStroke(id, bytes, skip);
    if (stroke !== null) strokes.push(stroke);
  });
  const ink = new Map<string, Record<View, InkStroke[]>>();
  for (const stroke of strokes.sort(byHeight)) {
    const views = ink.get(stroke.panel) ?? { side: [], front: [] };
    views[stroke.view].push(stroke);
    ink.set(stroke.panel, views);
  }
  return ink;
}
