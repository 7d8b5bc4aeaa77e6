import type * as Y from "yjs";
import { packStroke, type Stroke } from "../../ink";
import { ID_FIELD } from "../fields";
import { requireField } from "../require-field";
import { ORIGIN, panelOf, strokesOf } from "../schema";
import type { StrokeId } from "../sheet";
import { inkFollows } from "../to-redraw";

/**
 * Keeps a finished stroke, whole, when the pen lifts. Strokes have ids of their own, so two people's
 * never meet. What was to redraw there is redrawn. One drawn into a panel that was removed meanwhile is kept, and shows when the panel is back.
 *
 * Units:   panel units, pressure 0..1
 * Errors:  SheetError "panel-missing"; RangeError for what is no stroke (see `packStroke`) or no id
 */
export function drawStroke(doc: Y.Doc, id: StrokeId, stroke: Stroke): void {
  requireField("drawStroke", "an id of", ID_FIELD, id);
  const bytes = packStroke(stroke);
  doc.transact(() => {
    panelOf(doc, stroke.panel);
    strokesOf(doc).set(id, bytes);
    inkFollows(doc, [stroke]);
  }, ORIGIN.hand);
}
