import * as Y from "yjs";
import { type Field, isRecord, oneOf } from "../field";
import { HEAD_FIELDS, ID_FIELD, MARK_FIELD, PANEL_FIELDS, PICTURE_FIELD } from "../fields";
import { readOnPurpose } from "../read-critique";
import { MARK_KEYS } from "../read-panel";
import { isPictureKey } from "../read-pictures";
import { readStroke } from "../read-stroke";
import { CRITIQUE, DRAWING, isMap, ORIGIN, panelsOf } from "../schema";
import type { Change } from "../set-aside/change";
import { REDRAW_KEYS } from "../to-redraw";

/** A change that could not be made again, and why. */
export interface NotDone {
  readonly change: Change;
  readonly why: "panel-missing" | "unreadable";
}

/**
 * Makes changes again that were set aside, as one step: in a document that was opened afresh after the one
 * they were made in was refused, or put back to an older state. Each value is looked at as a verb looks at
 * it. Where somebody changed the same value meanwhile this one stands, as the later write.
 *
 * @returns what could not be made again; the rest is done
 */
export function doAgain(
  doc: Y.Doc,
  document: "drawing" | "critique",
  changes: readonly Change[],
): readonly NotDone[] {
  const notDone: NotDone[] = [];
  const make = document === "drawing" ? drawAgain : sayAgain;
  doc.transact(() => {
    for (const change of changes.toSorted(panelsFirst)) {
      const why = make(doc, change);
      if (why !== null) notDone.push({ change, why });
    }
  }, ORIGIN.hand);
  return notDone;
}

type Why = NotDone["why"] | null;

/** A panel is there before what is drawn and marked in it. */
function panelsFirst(one: Change, other: Change): number {
  return rankOf(one) - rankOf(other);
}

function rankOf({ part, panel }: Change): number {
  if (part !== DRAWING.panels) return 2;
  return panel === null ? 0 : 1;
}

function drawAgain(doc: Y.Doc, change: Change): Why {
  const { part, panel, key, value } = change;
  if (part === DRAWING.panels) {
    return panel === null ? hangAgain(doc, key, value) : setIn(doc, panel, change);
  }
  if (panel !== null) return "unreadable";
  if (part === DRAWING.strokes) return inkAgain(doc, key, value);
  if (part !== DRAWING.sheet) return "unreadable";
  return setOrDelete(doc.getMap(part), change, fieldOf(HEAD_FIELDS, key));
}

/** A panel's own map is never replaced: what others put into it would go with it. */
function hangAgain(doc: Y.Doc, id: string, value: unknown): Why {
  if (!ID_FIELD.fits(id) || !isRecord(value)) return "unreadable";
  const panels = panelsOf(doc);
  if (!panels.has(id)) panels.set(id, new Y.Map());
  for (const [key, entry] of Object.entries(value)) {
    setIn(doc, id, { key, value: entry }); // what cannot be read is not shown there either
  }
  return null;
}

function setIn(doc: Y.Doc, panel: string, { key, value }: Pick<Change, "key" | "value">): Why {
  const map = panelsOf(doc).get(panel);
  if (!isMap(map)) return "panel-missing";
  return setOrDelete(map, { key, value }, panelField(key));
}

const SIGN = oneOf([true]);
const REMOVED = oneOf([true, false]);

function panelField(key: string): Field<unknown> | undefined {
  if (MARK_KEYS.has(key)) return MARK_FIELD;
  if (isPictureKey(key)) return PICTURE_FIELD;
  if (REDRAW_KEYS.has(key)) return SIGN;
  if (key === "removed") return REMOVED;
  return fieldOf(PANEL_FIELDS, key);
}

/** A key may come from a damaged store: what every object has is no field. */
function fieldOf<Fields extends object>(fields: Fields, key: string): Field<unknown> | undefined {
  return Object.hasOwn(fields, key) ? (fields[key as keyof Fields] as Field<unknown>) : undefined;
}

function inkAgain(doc: Y.Doc, id: string, value: unknown): Why {
  const strokes = doc.getMap(DRAWING.strokes);
  if (value === undefined) {
    strokes.delete(id);
    return null;
  }
  const stroke = readStroke(id, value, () => {});
  if (stroke === null) return "unreadable";
  if (!panelsOf(doc).has(stroke.panel)) return "panel-missing";
  strokes.set(id, value);
  return null;
}

function sayAgain(doc: Y.Doc, { part, panel, key, value }: Change): Why {
  if (part !== CRITIQUE.onPurpose || panel !== null) return "unreadable";
  const entries = doc.getMap(part);
  if (value === undefined) entries.delete(key);
  else if (readOnPurpose(key, value) === null) return "unreadable";
  else entries.set(key, value);
  return null;
}

function setOrDelete(
  map: Y.Map<unknown>,
  { key, value }: Pick<Change, "key" | "value">,
  field: Field<unknown> | undefined,
): Why {
  if (field === undefined) return "unreadable";
  if (value === undefined) map.delete(key);
  else if (field.fits(value)) map.set(key, value);
  else return "unreadable";
  return null;
}
