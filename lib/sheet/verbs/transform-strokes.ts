import type * as Y from "yjs";
import type { View } from "../../geometry";
import { type InkColour, packStroke, type Shaping, type Stroke, shapeStroke } from "../../ink";
import { readStroke } from "../read-stroke";
import { ORIGIN, panelOf, strokesOf } from "../schema";
import type { PanelId, StrokeId } from "../sheet";
import { inkFollows } from "../to-redraw";

/** What becomes of gathered strokes; what is not named stays. */
export interface StrokeChange {
  readonly shaping?: Shaping;
  readonly colour?: InkColour;
  readonly panel?: PanelId;
  readonly view?: View;
}

/**
 * Moves, turns, scales or recolours strokes, or takes them to another paper, all in one edit. They
 * keep their ids and their order. When two change one stroke at once, the later write wins, whole:
 * it is there once. One that was rubbed out before stays so; rubbed out at the same time it is back.
 *
 * Units:   panel units, radians
 * Errors:  SheetError "panel-missing"; RangeError for a shaping that is none (see `shapeStroke`),
 *          before anything is written
 */
export function transformStrokes(
  doc: Y.Doc,
  ids: Iterable<StrokeId>,
  { shaping, ...rest }: StrokeChange,
): void {
  const strokes = strokesOf(doc);
  if (rest.panel !== undefined) panelOf(doc, rest.panel);
  const changed = [...new Set(ids)].flatMap((id) => {
    const read = strokes.has(id) ? readStroke(id, strokes.get(id), () => {}) : null;
    if (read === null) return [];
    const { id: _id, ...stroke } = read;
    const shaped: Stroke = shaping === undefined ? stroke : shapeStroke(stroke, shaping);
    const now: Stroke = { ...shaped, ...rest };
    return [{ id, papers: [stroke, now], bytes: packStroke(now) }];
  });
  // Another colour alone leaves the drawing where it was.
  const isRedrawn = shaping !== undefined || rest.panel !== undefined || rest.view !== undefined;
  doc.transact(() => {
    if (isRedrawn) for (const { papers } of changed) inkFollows(doc, papers);
    for (const { id, bytes } of changed) strokes.set(id, bytes);
  }, ORIGIN.hand);
}
