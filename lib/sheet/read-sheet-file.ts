import { JOINTS, type JointName, type Mark, type ViewMarks } from "../body";
import type { OnPurpose } from "../gait";
import { VIEWS, type View } from "../geometry";
import { type InkPoint, quantiseStroke } from "../ink";
import { type Field, isRecord } from "./field";
import {
  HEAD_FIELDS,
  ID_FIELD,
  KEPT_SIDES_FIELD,
  MARK_FIELD,
  MAX_POINTS,
  ON_PURPOSE_FIELDS,
  PANEL_FIELDS,
  POINT_FIELD,
  STROKE_FIELDS,
  SUBJECT_FIELD,
  TO_REDRAW_FIELD,
} from "./fields";
import { byFrame, byHeight } from "./order";
import { byId } from "./read-critique";
import type { HandedSheet, InkStroke, Panel, SheetHead } from "./sheet";
import { MAX_SHEET_FILE_BYTES, SHEET_FILE_FORMAT, SHEET_FILE_VERSION } from "./sheet-file";
import { SheetFileError } from "./sheet-file-error";
import { shown } from "./shown";

const MAX_ENTRIES = 1_000_000; // panels or strokes; the size of the file is reached long before

/** Some editors put it before a file's text; JSON knows nothing of it, and a browser drops it. */
const BYTE_ORDER_MARK = "\uFEFF";

/**
 * Reads a sheet file, whole or not at all.
 *
 * Errors:  SheetFileError "too-large" (over 16 MiB), "not-json", "foreign" (JSON of something else),
 *          "newer-version", or "damaged", which names the place: what was expected there, what was got
 */
export function readSheetFile(text: string): HandedSheet {
  if (text.length > MAX_SHEET_FILE_BYTES) throw tooLarge(text.length);
  const file = parsed(text);
  if (!isRecord(file) || file.format !== SHEET_FILE_FORMAT) {
    const got = isRecord(file) ? `format ${shown(file.format)}` : shown(file);
    throw new SheetFileError("foreign", `expected format "${SHEET_FILE_FORMAT}", got ${got}`);
  }
  const { version } = file;
  if (typeof version === "number" && version > SHEET_FILE_VERSION) {
    throw new SheetFileError(
      "newer-version",
      `expected version ${SHEET_FILE_VERSION}, got ${version}: written by a newer Heelstrip`,
    );
  }
  if (version !== SHEET_FILE_VERSION) {
    throw damaged("version", String(SHEET_FILE_VERSION), version);
  }
  const always = ["format", "version", "head", "panels"] as const;
  const names = "onPurpose" in file ? ([...always, "onPurpose"] as const) : always;
  const { head, panels, onPurpose }: FileParts = parts("", file, names);
  const ids = { panels: new Set<string>(), strokes: new Set<string>() };
  return {
    head: readHead(head),
    panels: list("panels", panels, 0, MAX_ENTRIES)
      .map((panel, index) => readPanel(`panels[${index}]`, panel, ids))
      .sort(byFrame),
    ...("onPurpose" in file ? { onPurpose: readOnPurpose(onPurpose) } : {}),
  };
}

interface FileParts {
  readonly head: unknown;
  readonly panels: unknown;
  readonly onPurpose?: unknown;
}

/** What is said of a file over the limit, also before it is read. Units: bytes. */
export function tooLarge(bytes: number): SheetFileError {
  const mebibytes = (size: number) => (size / 1024 / 1024).toFixed(1);
  return new SheetFileError(
    "too-large",
    `expected up to ${mebibytes(MAX_SHEET_FILE_BYTES)} MiB, got ${mebibytes(bytes)} MiB`,
  );
}

interface Ids {
  readonly panels: Set<string>;
  readonly strokes: Set<string>;
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text.startsWith(BYTE_ORDER_MARK) ? text.slice(1) : text);
  } catch (cause) {
    const got = text.trim() === "" ? "an empty file" : "text that is none, or was cut short";
    throw new SheetFileError("not-json", `expected JSON, got ${got}`, { cause });
  }
}

function readHead(value: unknown): SheetHead {
  const { firstFrame, ground, load, ...always } = HEAD_FIELDS;
  const has = (name: string) => isRecord(value) && name in value;
  return fieldsOf<SheetHead>("head", value, {
    ...always,
    ...(has("ground") ? { ground } : {}),
    ...(has("load") ? { load } : {}),
    ...(has("firstFrame") ? { firstFrame } : {}),
  });
}

function readPanel(place: string, value: unknown, ids: Ids): Panel {
  const isSigned = isRecord(value) && "toRedraw" in value;
  const { id, marks, ink, toRedraw, ...rest } = parts(place, value, [
    "id",
    ...Object.keys(PANEL_FIELDS),
    "marks",
    ...(isSigned ? ["toRedraw"] : []),
    "ink",
  ]);
  const fields = fieldsOf(place, rest, PANEL_FIELDS);
  const panel = newId(`${place}.id`, id, ids.panels);
  const views = parts(`${place}.marks`, marks, VIEWS);
  const inks = parts(`${place}.ink`, ink, VIEWS);
  const strokes = (view: View): readonly InkStroke[] =>
    list(`${place}.ink.${view}`, inks[view], 0, MAX_ENTRIES)
      .map((stroke, index) =>
        readStroke(`${place}.ink.${view}[${index}]`, stroke, { panel, view }, ids),
      )
      .sort(byHeight);
  return {
    id: panel,
    ...fields,
    marks: {
      side: readMarks(`${place}.marks.side`, views.side),
      front: readMarks(`${place}.marks.front`, views.front),
    },
    toRedraw: isSigned
      ? field(`${place}.toRedraw`, toRedraw, TO_REDRAW_FIELD)
      : { side: false, front: false },
    ink: { side: strokes("side"), front: strokes("front") },
    pictures: { side: null, front: null }, // a file has none: see docs/adr/0016
  };
}

/** Files from before anything could be kept on purpose have none. */
function readOnPurpose(value: unknown): readonly OnPurpose[] {
  const ids = new Set<string>();
  return list("onPurpose", value, 0, MAX_ENTRIES)
    .map((entry, index): OnPurpose => {
      const place = `onPurpose[${index}]`;
      const has = (name: "subject" | "sides") => isRecord(entry) && name in entry;
      const beside = (["subject", "sides"] as const).filter(has);
      const names = ["id", ...Object.keys(ON_PURPOSE_FIELDS), ...beside];
      const { id, subject, sides, ...rest } = parts(place, entry, names);
      const fields = fieldsOf(place, rest, ON_PURPOSE_FIELDS);
      return {
        id: newId(`${place}.id`, id, ids),
        ...fields,
        ...(has("subject") ? { subject: field(`${place}.subject`, subject, SUBJECT_FIELD) } : {}),
        ...(has("sides") ? { sides: field(`${place}.sides`, sides, KEPT_SIDES_FIELD) } : {}),
      };
    })
    .sort(byId);
}

function readMarks(place: string, value: unknown): ViewMarks {
  if (!isRecord(value)) throw damaged(place, "marks by joint", value);
  const unknown = Object.keys(value).find((name) => !(JOINTS as readonly string[]).includes(name));
  if (unknown !== undefined) throw damaged(place, "names of joints", unknown);
  const marks: { [J in JointName]?: Mark } = {};
  for (const joint of JOINTS) {
    const triple = value[joint];
    if (triple === undefined) continue;
    const [x, y, precision] = field(`${place}.${joint}`, triple, MARK_FIELD);
    marks[joint] = { x, y, precision };
  }
  return marks;
}

function readStroke(
  place: string,
  value: unknown,
  where: Pick<InkStroke, "panel" | "view">,
  ids: Ids,
): InkStroke {
  const names = ["id", ...Object.keys(STROKE_FIELDS), "points"] as const;
  const { id, points, ...rest } = parts(place, value, names);
  const fields = fieldsOf(place, rest, STROKE_FIELDS);
  const stroke = {
    ...where,
    ...fields,
    points: list(`${place}.points`, points, 1, MAX_POINTS).map(
      (point, index): InkPoint => field(`${place}.points[${index}]`, point, POINT_FIELD),
    ),
  };
  return { id: newId(`${place}.id`, id, ids.strokes), ...quantiseStroke(stroke) };
}

/** A record's fields, each of which must fit; it may have no others. */
function fieldsOf<T extends object>(
  place: string,
  value: unknown,
  fields: { readonly [K in keyof T]: Field<Exclude<T[K], undefined>> },
): T {
  const names = Object.keys(fields) as (keyof T & string)[];
  const record = parts(place, value, names);
  const read: Partial<T> = {};
  for (const name of names) read[name] = field(`${place}.${name}`, record[name], fields[name]);
  return read as T;
}

/** A record of exactly these parts. */
function parts<Name extends string>(
  place: string,
  value: unknown,
  names: readonly Name[],
): Record<Name, unknown> {
  if (!isRecord(value)) throw damaged(place, `an object with ${names.join(", ")}`, value);
  const unknown = Object.keys(value).find((name) => !(names as readonly string[]).includes(name));
  if (unknown !== undefined) throw damaged(place, `only ${names.join(", ")}`, unknown);
  const missing = names.find((name) => !(name in value));
  if (missing !== undefined) {
    throw damaged(place === "" ? missing : `${place}.${missing}`, "a value", undefined);
  }
  return value as Record<Name, unknown>;
}

function field<T>(place: string, value: unknown, { fits, expected }: Field<T>): T {
  if (!fits(value)) throw damaged(place, expected, value);
  return value;
}

function list(place: string, value: unknown, least: number, most: number): readonly unknown[] {
  if (!Array.isArray(value) || value.length < least || value.length > most) {
    throw damaged(place, `a list of ${least} to ${most}`, value);
  }
  return value;
}

/** An id that was not seen before in this file. */
function newId(place: string, value: unknown, seen: Set<string>): string {
  const id = field(place, value, ID_FIELD);
  if (seen.has(id)) throw damaged(place, "an id of its own", id);
  seen.add(id);
  return id;
}

function damaged(place: string, expected: string, value: unknown): SheetFileError {
  const where = place === "" ? "the file" : place;
  return new SheetFileError("damaged", `${where}: expected ${expected}, got ${shown(value)}`);
}
