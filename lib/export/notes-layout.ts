import { type Note, noteHeight, type PlacedSign, placeNote, splitNote } from "./note";
import type { TextRun } from "./text-run";

/** The notes of one page with their places. Units: page units. */
export interface NotesLayout {
  readonly runs: readonly TextRun[];
  readonly signs: readonly PlacedSign[];
  readonly bottom: number;
}

export interface Columns {
  readonly count: number;
  readonly width: number;
}

const LEAST_COLUMN = 400; // units: about 55 letters a line; common practice, no source
const MOST_COLUMNS = 4;
const COLUMN_GAP = 44;
export const NOTE_GAP = 16;

/** How many columns a width has room for, and how wide each is. Units: page units. */
export function columnsIn(width: number): Columns {
  const room = Math.floor((width + COLUMN_GAP) / (LEAST_COLUMN + COLUMN_GAP));
  const count = Math.min(MOST_COLUMNS, Math.max(1, room));
  return { count, width: (width - (count - 1) * COLUMN_GAP) / count };
}

/** Where notes are placed. Units: page units. */
export interface NotesArea {
  readonly left: number;
  readonly top: number;
  readonly columns: Columns;
}

/** Lays notes out in columns of about equal height, read downward. Units: page units. */
export function layOutNotes(notes: readonly Note[], area: NotesArea): NotesLayout {
  return place(intoColumns(notes, area.columns.count), area);
}

/** How high notes stand in columns of about equal height. Units: page units. */
export function notesHeight(notes: readonly Note[], { count }: Columns): number {
  return Math.max(0, ...intoColumns(notes, count).map(columnHeight));
}

/**
 * Fills columns of a height to their foot, one after the other, and answers what found no room. A note is
 * broken only where it would not fit an empty column either.
 *
 * Units:   page units
 */
export function fillColumns(
  notes: readonly Note[],
  area: NotesArea,
  height: number,
): { readonly layout: NotesLayout; readonly rest: readonly Note[] } {
  const waiting = [...notes];
  const columns: Note[][] = [];
  while (columns.length < area.columns.count && waiting.length > 0) {
    columns.push(fillOne(waiting, height));
  }
  return { layout: place(columns, area), rest: waiting };
}

/** Takes from the front of what waits as much as one column holds. */
function fillOne(waiting: Note[], height: number): Note[] {
  const column: Note[] = [];
  for (let note = waiting.shift(); note !== undefined; note = waiting.shift()) {
    const next = [...column, note];
    if (columnHeight(next) <= height) {
      column.push(note);
      continue;
    }
    if (column.length > 0) {
      waiting.unshift(note);
      break;
    }
    const [first, rest] = splitNote(note, height);
    column.push(first);
    if (rest.lines.length > 0) waiting.unshift(rest);
    break;
  }
  return column;
}

function place(columns: readonly (readonly Note[])[], area: NotesArea): NotesLayout {
  const runs: TextRun[] = [];
  const signs: PlacedSign[] = [];
  columns.forEach((column, index) => {
    const x = area.left + index * (area.columns.width + COLUMN_GAP);
    let y = area.top;
    for (const note of column) {
      const placed = placeNote(note, { x, y });
      runs.push(...placed.runs);
      if (placed.sign !== null) signs.push(placed.sign);
      y += noteHeight(note) + NOTE_GAP;
    }
  });
  return { runs, signs, bottom: area.top + Math.max(0, ...columns.map(columnHeight)) };
}

function columnHeight(column: readonly Note[]): number {
  const gaps = Math.max(0, column.length - 1) * NOTE_GAP;
  return column.reduce((sum, note) => sum + noteHeight(note), gaps);
}

/** Fills columns downward, in order, each to about the same height. */
function intoColumns(notes: readonly Note[], most: number): Note[][] {
  const total = notes.reduce((sum, note) => sum + noteHeight(note) + NOTE_GAP, 0);
  const columns: Note[][] = [[]];
  let filled = 0;
  for (const note of notes) {
    const share = (total / most) * columns.length;
    const height = noteHeight(note);
    const startsNext = filled + height / 2 > share && columns.length < most;
    if (startsNext && columns.at(-1)?.length !== 0) columns.push([]);
    columns.at(-1)?.push(note);
    filled += height + NOTE_GAP;
  }
  return columns;
}
