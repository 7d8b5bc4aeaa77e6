import type { CannotTell, CheckId, Remark, Review } from "../gait";
import { VIEWS } from "../geometry";
import { type Panel, type Sheet, type SheetHead, shotFrame } from "../sheet";
import { SIGN_WORDS } from "./draw-sign";
import type { KeptEntry } from "./kept-entries";
import { HEADING, type Note, type NoteWish, noteOf, WHERE, WHY } from "./note";
import { levelColour, PALETTE } from "./palette";
import type { Keyed, KeyedRemark } from "./remark-keys";
import { YARDSTICK_NAMES } from "./sheet-words";
import { sumUpNeeds } from "./sum-up-needs";
import type { MeasureText } from "./typeface";

/** What the notes are made from. */
export interface NotesWish {
  readonly sheet: Sheet;
  readonly review: Review;
  readonly keyed: readonly KeyedRemark[];
  readonly kept: readonly Keyed<KeptEntry>[];
  /** A column's width, page units. */
  readonly width: number;
  readonly measure: MeasureText;
}

const CHECK_WORDS: Readonly<Record<CheckId, string>> = {
  "missing-pose": "missing poses",
  "pose-order": "the order of poses",
  "hip-order": "hip heights",
  "hip-range": "the hips' range",
  "weight-side": "the weight from the side",
  "weight-front": "the weight from the front",
  slide: "slipping feet",
  float: "floating feet",
  sink: "sinking feet",
  "foot-roll": "the feet's roll",
  clearance: "the swing toe's clearance",
  "limb-length": "limb lengths",
  reach: "the legs' reach",
  knee: "the knees' bend",
  snap: "snapping knees",
  gaps: "timing",
  symmetry: "whether the steps mirror each other",
  loop: "the loop's closing",
  hitch: "hitches between poses",
  opposition: "arms against legs",
  tempo: "step length and pace",
  width: "step width",
  views: "side and front agreeing",
  sides: "left and right",
  "lead-in": "the lead-in",
};

/**
 * The page's notes in the order they are read: remarks still open, what is kept on purpose and why, what is
 * to be redrawn, what this kind of walk is not judged by, what could not be judged. None is dropped.
 */
export function notesOf(wish: NotesWish): readonly Note[] {
  const { keyed, kept, review, sheet, width, measure } = wish;
  const toRedraw = sheet.panels.filter((panel) => VIEWS.some((view) => panel.toRedraw[view]));
  const open = review.cannotTell;
  const tidy = review.remarks.filter(({ level }) => level === "tidy").length;
  const wishes: NoteWish[] = [
    ...keyed.map((one) => remarkNote(one, wish)),
    ...kept.map((one) => keptNote(one, wish)),
    ...(keyed.length === 0 && open.length === 0 ? [soundNote(review)] : []),
    ...(tidy > 0 ? [tidyNote(tidy)] : []),
    ...(toRedraw.length > 0 ? [redrawNote(toRedraw)] : []),
    ...(review.quieted.length > 0 ? [quietNote(review)] : []),
    ...(open.length > 0 ? [openNote(open)] : []),
  ];
  return wishes.map((one) => noteOf(one, width, measure));
}

function remarkNote({ key, remark }: KeyedRemark, { sheet }: NotesWish): NoteWish {
  return {
    panel: remark.panels.at(-1),
    sign: remark.level,
    paragraphs: [
      heading(`${key}  ${remark.title}`, levelColour(remark.level)),
      whereLine([SIGN_WORDS[remark.level], ...whereParts(remark, sheet)]),
      said(remark.why),
    ],
  };
}

function keptNote({ key, entry, remarks }: Keyed<KeptEntry>, { sheet }: NotesWish): NoteWish {
  const titles = [...new Set(remarks.map(({ title }) => title))].join("; ");
  const places = remarks.map((remark) => whereParts(remark, sheet).filter(isSaid).join(", "));
  const keeper = entry.by.trim() === "" ? "" : `kept by ${entry.by.trim()}`;
  const reason = entry.reason.trim();
  return {
    panel: remarks[0]?.panels.at(-1),
    sign: "on-purpose",
    paragraphs: [
      heading(`${key}  ${titles}`),
      whereLine([SIGN_WORDS["on-purpose"], ...places, keeper]),
      said(reason === "" ? "No reason was given." : `“${reason}”`),
    ],
  };
}

function heading(text: string, colour: string = PALETTE.text) {
  return { text, face: HEADING, colour };
}

function said(text: string, colour: string = PALETTE.text) {
  return { text, face: WHY, colour };
}

const isSaid = (part: string): boolean => part !== "";

function whereLine(parts: readonly string[]) {
  const text = parts.filter(isSaid).join(" · ");
  return { text, face: WHERE, colour: PALETTE.faintText };
}

function whereParts(remark: Remark, { panels, head }: Sheet): string[] {
  const seen = panels.find(({ id }) => id === remark.panels.at(-1));
  return [seen === undefined ? "" : panelWords(seen), framesInWords(remark.frames, head)];
}

/** "passing left". */
function panelWords({ pose, weightOn }: Panel): string {
  return weightOn === null ? pose : `${pose} ${weightOn}`;
}

function framesInWords(frames: readonly number[], head: SheetHead): string {
  const [first, last] = [frames[0], frames.at(-1)];
  if (first === undefined || last === undefined) return "";
  const words = (from: number, to: number) => (from === to ? `${from}` : `${from} to ${to}`);
  const own = `${first === last ? "frame" : "frames"} ${words(first, last)}`;
  if (head.firstFrame === undefined) return own;
  return `${own} (shot ${words(shotFrame(first, head), shotFrame(last, head))})`;
}

function soundNote({ yardstick }: Review): NoteWish {
  return {
    paragraphs: [heading(`Nothing to remark by the yardstick ${YARDSTICK_NAMES[yardstick]}.`)],
  };
}

function tidyNote(count: number): NoteWish {
  const text = `${count} tidy ${count === 1 ? "remark is" : "remarks are"} folded away.`;
  return { sign: "tidy", paragraphs: [said(text, PALETTE.faintText)] };
}

function redrawNote(panels: readonly Panel[]): NoteWish {
  const told = panels.map((panel) => {
    const views = VIEWS.filter((view) => panel.toRedraw[view]);
    return `${panelWords(panel)}, frame ${panel.frame} (${views.join(" and ")})`;
  });
  const text = `The marks were moved, the drawing is still the old one: ${told.join("; ")}.`;
  return { paragraphs: [heading("To redraw"), said(text)] };
}

function quietNote({ quieted }: Review): NoteWish {
  const text = `Not judged: ${quieted.map(({ why }) => why).join("; ")}.`;
  return { paragraphs: [said(text, PALETTE.faintText)] };
}

/** What is missing, each need told once with all that it would answer. */
function openNote(open: readonly CannotTell[]): NoteWish {
  const lines = sumUpNeeds(open).map(({ needs, checks }) => {
    const answers = checks.map((check) => CHECK_WORDS[check]).join(", ");
    return said(`${sentenceStart(answers)}: needs ${needs}.`, PALETTE.faintText);
  });
  return { paragraphs: [heading("Not judged yet"), ...lines] };
}

function sentenceStart(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
