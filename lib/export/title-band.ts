import type { Yardstick } from "../gait";
import type { SheetHead } from "../sheet";
import { PALETTE } from "./palette";
import { natureWords, tempoWords } from "./sheet-words";
import { ellipsise, wrapAtMost } from "./text-lines";
import type { TextRun } from "./text-run";
import type { Face, MeasureText } from "./typeface";

/** What the title band is made from. */
export interface TitleWish {
  readonly head: SheetHead;
  readonly yardstick: Yardstick;
  /** The day, as the reader writes it. */
  readonly date: string;
  readonly left: number;
  readonly width: number;
  readonly top: number;
  readonly measure: MeasureText;
}

const TITLE: Face = { size: 44, weight: 700 };
const SHOT: Face = { size: 22, weight: 600 };
const DATE: Face = { size: 17, weight: 400 };
const BODY: Face = { size: 18, weight: 400 };
const GAP = 48; // px between the title and what stands at the right
const LINE = 27;

/** The title band's lines, and where it ends. Units: page pixels. */
export function layOutTitle(wish: TitleWish): { runs: readonly TextRun[]; bottom: number } {
  const { head, date, left, width, top, measure } = wish;
  const right = left + width;
  const shot = ellipsise(head.shot.trim(), SHOT, width * 0.35, measure);
  const day = ellipsise(date.trim(), DATE, width * 0.35, measure);
  const aside = Math.max(measure(shot, SHOT), measure(day, DATE));
  const room = aside === 0 ? width : width - aside - GAP;
  const title = head.title.trim() === "" ? "Untitled walk" : head.title.trim();
  const runs: TextRun[] = [
    {
      text: ellipsise(title, TITLE, room, measure),
      x: left,
      y: top + 40,
      face: TITLE,
      colour: PALETTE.text,
    },
    { text: shot, x: right, y: top + 14, face: SHOT, colour: PALETTE.text, align: "right" },
    { text: day, x: right, y: top + 41, face: DATE, colour: PALETTE.faintText, align: "right" },
  ];
  let y = top + 80;
  for (const { text, colour } of bodyOf(wish)) {
    for (const line of wrapAtMost(text, BODY, width, measure, 2)) {
      runs.push({ text: line, x: left, y, face: BODY, colour });
      y += LINE;
    }
  }
  return { runs: runs.filter((run) => run.text !== ""), bottom: y - LINE + 18 };
}

function bodyOf({ head, yardstick }: TitleWish): { text: string; colour: string }[] {
  return [
    { text: tempoWords(head), colour: PALETTE.text },
    { text: natureWords(head, yardstick), colour: PALETTE.faintText },
    { text: head.credit, colour: PALETTE.faintText },
  ];
}
