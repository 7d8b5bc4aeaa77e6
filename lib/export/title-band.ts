import type { Yardstick } from "../gait";
import type { SheetHead } from "../sheet";
import { PALETTE } from "./palette";
import { natureWords, tempoWords, titleWords } from "./sheet-words";
import { ellipsise, wrapText } from "./text-lines";
import type { TextRun } from "./text-run";
import type { Face, MeasureText } from "./typeface";

/** What the title band is made from. */
export interface TitleWish {
  readonly head: SheetHead;
  readonly yardstick: Yardstick;
  /** The day, in words. */
  readonly date: string;
  readonly left: number;
  readonly width: number;
  readonly top: number;
  readonly measure: MeasureText;
}

export interface TitleBand {
  readonly runs: readonly TextRun[];
  /** Where its rule runs. */
  readonly bottom: number;
}

const TITLES: readonly Face[] = [44, 36, 28, 22].map((size) => ({ size, weight: 700 }));
const LARGEST_SHARE = 1 / 40; // of the band's width: on a narrow page a title would push the rest aside
const SHOTS: readonly Face[] = [22, 17].map((size) => ({ size, weight: 600 }));
const DATE: Face = { size: 17, weight: 400 };
const BODY: Face = { size: 17, weight: 400 };
const ASIDE_SHARE = 0.35; // of the width, for what stands at the right
const GAP = 48; // units between the title and what stands at the right
const LINE = 25;
const LEADING = 1.15;

/** The first page's title band: its lines, and where it ends. Nothing is cut. Units: page units. */
export function layOutTitle(wish: TitleWish): TitleBand {
  const { head, date, left, width, top, measure } = wish;
  const right = left + width;
  const shot = wrapLarge(head.shot.trim(), SHOTS, width * ASIDE_SHARE, measure);
  const day = wrapText(date.trim(), DATE, width * ASIDE_SHARE, measure);
  const aside = stack(top, [shot, { lines: day, face: DATE }]);
  const asideWidth = Math.max(0, ...aside.map(({ text, face }) => measure(text, face)));
  const room = asideWidth === 0 ? width : width - asideWidth - GAP;
  const faces = TITLES.filter(({ size }) => size <= width * LARGEST_SHARE);
  const title = stack(top, [wrapLarge(titleWords(head), faces, room, measure)]);
  const runs: TextRun[] = [
    ...title.map((line) => ({ ...line, x: left, colour: PALETTE.text })),
    ...aside.map((line) => ({ ...line, x: right, align: "right" as const, colour: PALETTE.text })),
  ];
  let y = Math.max(...[...title, ...aside].map((line) => line.y)) + 9;
  for (const { text, colour } of bodyOf(wish)) {
    for (const line of wrapText(text, BODY, width, measure)) {
      y += LINE;
      runs.push({ text: line, x: left, y, face: BODY, colour });
    }
  }
  return { runs, bottom: y + 14 };
}

interface Wrapped {
  readonly lines: readonly string[];
  readonly face: Face;
}

/** A text in the largest face that takes two lines at most; else in the smallest, in as many as it takes. */
function wrapLarge(
  text: string,
  faces: readonly Face[],
  width: number,
  measure: MeasureText,
): Wrapped {
  const tries = faces.map((face) => ({ face, lines: wrapText(text, face, width, measure) }));
  const last = tries.at(-1) ?? { face: DATE, lines: wrapText(text, DATE, width, measure) };
  return tries.find(({ lines }) => lines.length <= 2) ?? last;
}

/** Lines under one another from the top, by their baselines. */
function stack(top: number, parts: readonly Wrapped[]): Pick<TextRun, "text" | "y" | "face">[] {
  let y = top;
  return parts.flatMap(({ lines, face }) =>
    lines.map((text, index) => {
      y += face.size * (y === top && index === 0 ? CAPITALS : LEADING);
      return { text, y, face };
    }),
  );
}

const CAPITALS = 0.78; // of the size: the first line's capitals stand at the top

function bodyOf({ head, yardstick }: TitleWish): { text: string; colour: string }[] {
  const nature = natureWords(head, yardstick);
  const credit = head.credit.trim();
  return [
    { text: tempoWords(head), colour: PALETTE.text },
    { text: [nature, credit].filter((part) => part !== "").join(" · "), colour: PALETTE.faintText },
  ];
}

const SLIM: Face = { size: 20, weight: 700 };
const ASIDE: Face = { size: 16, weight: 400 };

/** What a later page says of the sheet, on one line. Units: page units. */
export function layOutSlimTitle(wish: TitleWish): TitleBand {
  const { head, date, left, width, top, measure } = wish;
  const parts = [head.shot.trim(), date.trim()].filter((part) => part !== "");
  const aside = ellipsise(parts.join(" · "), ASIDE, width * 0.45, measure);
  const asideWidth = aside === "" ? 0 : measure(aside, ASIDE) + GAP;
  const y = top + 16;
  const runs: TextRun[] = [
    {
      text: ellipsise(titleWords(head), SLIM, width - asideWidth, measure),
      x: left,
      y,
      face: SLIM,
      colour: PALETTE.text,
    },
    { text: aside, x: left + width, y, face: ASIDE, colour: PALETTE.faintText, align: "right" },
  ];
  return { runs: runs.filter((run) => run.text !== ""), bottom: top + 30 };
}
