import type { CannotTell, CheckId, Review } from "../gait";
import type { Point } from "../geometry";
import type { Panel } from "../sheet";
import { SIGN_WORDS, type SignKind } from "./draw-sign";
import { levelColour, PALETTE } from "./palette";
import { type KeyedRemark, unanswered } from "./remark-keys";
import { wrapText } from "./text-lines";
import type { TextRun } from "./text-run";
import type { Face, MeasureText } from "./typeface";

/** A remark in words, or what could not be told: a block of lines that is never split. */
interface Note {
  readonly sign: SignKind | null;
  readonly runs: readonly TextRun[];
  readonly height: number;
}

/** The notes with their places on the page. Units: page pixels. */
export interface NotesLayout {
  readonly runs: readonly TextRun[];
  readonly signs: readonly { readonly kind: SignKind; readonly at: Point }[];
  readonly bottom: number;
}

/** What the notes are made from. */
export interface NotesWish {
  readonly keyed: readonly KeyedRemark[];
  readonly review: Review;
  readonly panels: readonly Panel[];
  readonly left: number;
  readonly width: number;
  readonly top: number;
  readonly measure: MeasureText;
}

const HEADING: Face = { size: 18, weight: 700 };
const WHERE: Face = { size: 15, weight: 600 };
const WHY: Face = { size: 16, weight: 400 };
const INDENT = 30; // px: the sign and its number stand before the words
const COLUMNS = 3;
const COLUMN_GAP = 44;
const NOTE_GAP = 20;
const CHECK_WORDS: Readonly<Record<CheckId, string>> = {
  "missing-pose": "Missing poses need",
  "pose-order": "The order of poses needs",
  "hip-order": "Hip heights need",
  "weight-side": "The weight from the side needs",
  "weight-front": "The weight from the front needs",
  slide: "Slipping feet need",
  float: "Floating feet need",
  sink: "Sinking feet need",
  "foot-roll": "The feet's roll needs",
  gaps: "Timing needs",
  symmetry: "The shoulders' swing needs",
};

/**
 * Lays the remarks out in words, in columns of about equal height, read downward; then what could
 * not be judged and what it needs. No remark is dropped: the page grows.
 */
export function layOutNotes(wish: NotesWish): NotesLayout {
  const { left, width, top } = wish;
  const columnWidth = (width - (COLUMNS - 1) * COLUMN_GAP) / COLUMNS;
  const notes = notesOf(wish, columnWidth);
  const columns = intoColumns(notes, COLUMNS);
  const runs: TextRun[] = [];
  const signs: { kind: SignKind; at: Point }[] = [];
  let bottom = top;
  columns.forEach((column, index) => {
    const x = left + index * (columnWidth + COLUMN_GAP);
    let y = top;
    for (const note of column) {
      runs.push(...note.runs.map((run) => ({ ...run, x: run.x + x, y: run.y + y })));
      if (note.sign !== null) signs.push({ kind: note.sign, at: { x: x + 9, y: y + 12 } });
      y += note.height + NOTE_GAP;
    }
    bottom = Math.max(bottom, y - NOTE_GAP);
  });
  return { runs, signs, bottom };
}

function notesOf(wish: NotesWish, width: number): Note[] {
  const { keyed, review } = wish;
  const notes = keyed.map((one) => remarkNote(one, wish, width));
  const tidy = review.remarks.filter((remark) => remark.level === "tidy").length;
  if (notes.length === 0 && unanswered(review).length === 0) {
    notes.push(soundNote(review, width, wish.measure));
  }
  if (tidy > 0) notes.push(tidyNote(tidy));
  const open = openNote(unanswered(review), width, wish.measure);
  return open === null ? notes : [...notes, open];
}

function remarkNote({ key, remark }: KeyedRemark, wish: NotesWish, width: number): Note {
  const { panels, measure } = wish;
  const colour = levelColour(remark.level);
  const seen = panels.find((panel) => panel.id === remark.panels.at(-1));
  const where = [
    SIGN_WORDS[remark.level],
    seen === undefined ? "" : `${seen.pose}${seen.weightOn === null ? "" : ` ${seen.weightOn}`}`,
    framesInWords(remark.frames),
  ];
  return block(remark.level, measure, width, [
    { text: `${key}  ${remark.title}`, face: HEADING, colour },
    {
      text: where.filter((part) => part !== "").join(" · "),
      face: WHERE,
      colour: PALETTE.faintText,
    },
    { text: remark.why, face: WHY, colour: PALETTE.text },
  ]);
}

function framesInWords(frames: readonly number[]): string {
  const [first, last] = [frames[0], frames.at(-1)];
  if (first === undefined || last === undefined) return "";
  return first === last ? `frame ${first}` : `frames ${first} to ${last}`;
}

function soundNote(review: Review, width: number, measure: MeasureText): Note {
  const text = `Nothing to remark by the yardstick ${review.yardstick}.`;
  return block(null, measure, width, [{ text, face: HEADING, colour: PALETTE.text }]);
}

function tidyNote(count: number): Note {
  const text = `${count} tidy ${count === 1 ? "remark is" : "remarks are"} folded away.`;
  return {
    sign: "tidy",
    runs: [{ text, x: INDENT, y: 18, face: WHY, colour: PALETTE.faintText }],
    height: 22,
  };
}

function openNote(open: readonly CannotTell[], width: number, measure: MeasureText): Note | null {
  if (open.length === 0) return null;
  const needs = open.map(({ check, needs: what }) => ({
    text: `${CHECK_WORDS[check]} ${what}.`,
    face: WHY,
    colour: PALETTE.faintText,
  }));
  return block(null, measure, width, [
    { text: "Not judged yet", face: HEADING, colour: PALETTE.text },
    ...needs,
  ]);
}

/** Paragraphs under one another, indented where a sign stands before them. */
function block(
  sign: SignKind | null,
  measure: MeasureText,
  width: number,
  paragraphs: readonly Pick<TextRun, "text" | "face" | "colour">[],
): Note {
  const x = sign === null ? 0 : INDENT;
  const runs: TextRun[] = [];
  let y = 0;
  for (const { text, face, colour } of paragraphs) {
    for (const line of wrapText(text, face, width - x, measure)) {
      y += Math.round(face.size * 1.36);
      runs.push({ text: line, x, y: y - face.size * 0.3, face, colour });
    }
  }
  return { sign, runs, height: y };
}

/** Fills columns downward, in order, each to about the same height. */
function intoColumns(notes: readonly Note[], most: number): Note[][] {
  const total = notes.reduce((sum, note) => sum + note.height + NOTE_GAP, 0);
  const columns: Note[][] = [[]];
  let filled = 0;
  for (const note of notes) {
    const share = (total / most) * columns.length;
    const startsNext = filled + note.height / 2 > share && columns.length < most;
    if (startsNext && columns.at(-1)?.length !== 0) columns.push([]);
    columns.at(-1)?.push(note);
    filled += note.height + NOTE_GAP;
  }
  return columns;
}
