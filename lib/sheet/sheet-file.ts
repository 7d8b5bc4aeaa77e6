import type { JointName, ViewMarks } from "../body";
import type { OnPurpose } from "../gait";
import type { View } from "../geometry";
import { type InkPoint, quantiseStroke } from "../ink";
import type { MarkTriple } from "./fields";
import type { HandedSheet, InkStroke, Panel, SheetHead } from "./sheet";

export const SHEET_FILE_FORMAT = "heelstrip-sheet";
export const SHEET_FILE_VERSION = 1;
/** A sheet file may be this large: some 500,000 points of ink. */
export const MAX_SHEET_FILE_BYTES = 16 * 1024 * 1024;

/** A stroke in a file; its panel and view are those it stands in. */
export type FileStroke = Omit<InkStroke, "panel" | "view">;

/** A panel in a file: marks as [x, y, precision], ink as lists of [x, y, pressure]. */
export interface FilePanel extends Omit<Panel, "marks" | "toRedraw" | "ink" | "pictures"> {
  readonly marks: Readonly<Record<View, { readonly [J in JointName]?: MarkTriple }>>;
  /** Absent where the ink follows the marks in both views, and in older files. */
  readonly toRedraw?: Panel["toRedraw"];
  readonly ink: Readonly<Record<View, readonly FileStroke[]>>;
}

/** A sheet as a file holds it. `docs/heelstrip-sheet.schema.json` describes it for others. */
export interface SheetFile {
  readonly format: typeof SHEET_FILE_FORMAT;
  readonly version: typeof SHEET_FILE_VERSION;
  readonly head: SheetHead;
  readonly panels: readonly FilePanel[];
  /** What the team keeps on purpose; absent where nothing is kept, and in older files. */
  readonly onPurpose?: readonly OnPurpose[];
}

/**
 * A sheet as a plain JSON object. Nothing is lost that the document keeps: ink to 1/16 of a panel unit,
 * pressure to 1/63. Pictures under the paper are not the sheet's own work and stay behind: their bytes
 * lie beside the document, and a file that named them would open without them elsewhere.
 */
export function toSheetFile({ head, panels, onPurpose = [] }: HandedSheet): SheetFile {
  return {
    format: SHEET_FILE_FORMAT,
    version: SHEET_FILE_VERSION,
    head,
    panels: panels.map((panel) => ({
      id: panel.id,
      frame: panel.frame,
      hold: panel.hold,
      pose: panel.pose,
      weightOn: panel.weightOn,
      place: panel.place,
      marks: { side: triples(panel.marks.side), front: triples(panel.marks.front) },
      ...(panel.toRedraw.side || panel.toRedraw.front ? { toRedraw: panel.toRedraw } : {}),
      ink: { side: panel.ink.side.map(toFileStroke), front: panel.ink.front.map(toFileStroke) },
    })),
    ...(onPurpose.length === 0 ? {} : { onPurpose: onPurpose.map(inOrder) }),
  };
}

/** The text of a sheet file: JSON that a person can read and a version store can compare by line. */
export function sheetFileText(sheet: HandedSheet): string {
  return `${laidOut(toSheetFile(sheet), "")}\n`;
}

/** The same entry reads the same in every file. */
function inOrder({ id, check, subject, scope, reason, measured, sides, by }: OnPurpose): OnPurpose {
  return {
    id,
    check,
    ...(subject === undefined ? {} : { subject }),
    scope,
    reason,
    measured,
    ...(sides === undefined ? {} : { sides }),
    by,
  };
}

function triples(marks: ViewMarks): FilePanel["marks"]["side"] {
  return Object.fromEntries(
    Object.entries(marks).map(([joint, { x, y, precision }]) => [joint, [x, y, precision]]),
  );
}

function toFileStroke(stroke: InkStroke): FileStroke {
  const { nib, colour, width, z, points } = quantiseStroke(stroke);
  return { id: stroke.id, nib, colour, width, z, points: points.map(shortPoint) };
}

/** Three decimals tell 1/63 from 2/63; x and y are sixteenths and have four at most. */
function shortPoint([x, y, pressure]: InkPoint): InkPoint {
  return [x, y, Math.round(pressure * 1000) / 1000];
}

const LINE = 100; // columns

/** JSON with what fits on a line on one line, and a stroke's points always. */
function laidOut(value: unknown, indent: string): string {
  const flat = JSON.stringify(value);
  if (typeof value !== "object" || value === null) return flat;
  if (flat.length + indent.length <= LINE || isPoints(value)) return flat;
  const inner = `${indent}  `;
  if (Array.isArray(value)) {
    return `[\n${value.map((item) => inner + laidOut(item, inner)).join(",\n")}\n${indent}]`;
  }
  const lines = Object.entries(value).map(
    ([key, item]) => `${inner}${JSON.stringify(key)}: ${laidOut(item, inner)}`,
  );
  return `{\n${lines.join(",\n")}\n${indent}}`;
}

function isPoints(value: object): boolean {
  return Array.isArray(value) && Array.isArray(value[0]);
}
