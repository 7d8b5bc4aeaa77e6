import type { Point } from "../geometry";
import type { SignKind } from "./draw-sign";
import { wrapText } from "./text-lines";
import type { TextRun } from "./text-run";
import type { Face, MeasureText } from "./typeface";

/** One line of a note. Units: page units. */
export interface NoteLine {
  readonly text: string;
  readonly face: Face;
  readonly colour: string;
  readonly height: number;
}

/** A remark in words, a reason, or what could not be told: lines that are kept together. */
export interface Note {
  /** The panel it speaks of, so that it may stand on the same page; null for the walk. */
  readonly panel: string | null;
  /** The sign before its first line, if it has one. */
  readonly sign: SignKind | null;
  /** How far its lines stand in. Units: page units. */
  readonly indent: number;
  readonly lines: readonly NoteLine[];
}

export const HEADING: Face = { size: 18, weight: 700 };
export const WHERE: Face = { size: 15, weight: 600 };
export const WHY: Face = { size: 16, weight: 400 };

const INDENT = 30; // units: the sign stands before the words
const LEADING = 1.36; // of the size; common practice, no source

/** What a note is made from. */
export interface NoteWish {
  readonly panel?: string | undefined;
  readonly sign?: SignKind;
  readonly paragraphs: readonly Pick<TextRun, "text" | "face" | "colour">[];
}

/** Paragraphs under one another, wrapped to a column, indented where a sign stands before them. */
export function noteOf(wish: NoteWish, width: number, measure: MeasureText): Note {
  const { panel = null, sign = null, paragraphs } = wish;
  const indent = sign === null ? 0 : INDENT;
  const lines = paragraphs.flatMap(({ text, face, colour }) =>
    wrapText(text, face, width - indent, measure).map((line) => ({
      text: line,
      face,
      colour,
      height: Math.round(face.size * LEADING),
    })),
  );
  return { panel, sign, indent, lines };
}

export function noteHeight({ lines }: Note): number {
  return lines.reduce((sum, { height }) => sum + height, 0);
}

/** A note with its corner at a place: its lines as text, and where its sign stands. */
export function placeNote(note: Note, at: Point): { runs: TextRun[]; sign: PlacedSign | null } {
  let y = at.y;
  const runs = note.lines.map(({ text, face, colour, height }): TextRun => {
    y += height;
    return { text, x: at.x + note.indent, y: y - face.size * 0.3, face, colour };
  });
  const sign = note.sign === null ? null : { kind: note.sign, at: { x: at.x + 9, y: at.y + 12 } };
  return { runs, sign };
}

export interface PlacedSign {
  readonly kind: SignKind;
  readonly at: Point;
}

/** The most lines of a note that fit a height, and the rest of it; at least one line is taken. */
export function splitNote(note: Note, height: number): readonly [Note, Note] {
  let used = 0;
  let count = 0;
  for (const line of note.lines) {
    if (count > 0 && used + line.height > height) break;
    used += line.height;
    count += 1;
  }
  const rest = { ...note, sign: null, lines: note.lines.slice(count) };
  return [{ ...note, lines: note.lines.slice(0, count) }, rest];
}
