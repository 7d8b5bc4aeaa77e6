import { chromium, type Page } from "@playwright/test";
import type { JointName } from "../../lib/body";
import { capturedExample, type Sheet, sheetFileText } from "../../lib/sheet";
import { CHROMIUM_FLAGS, findChromium } from "../../scripts/house/chromium.mjs";
import { type Board, startBoard } from "../support/board-server";
import { dice } from "../support/dice";
import { createSheet } from "../support/hub-under-test";
import { ids } from "../support/peers";
import { takePen } from "../support/pen";
import { handPace } from "./hand-pace";
import { markByFigures } from "./mark-by-figures";
import { markByTaps, QUICK } from "./mark-by-taps";
import { readPaper } from "./marked-paper";
import { both, type Marking, offBy } from "./marking-hand";

const WINDOW = { width: 1440, height: 900 } as const;
const SEED = 9;

type Row = { what: string; figure: string };

/**
 * How long a person takes to mark the side views of a nine-panel cycle, at a pace from the literature (see
 * `hand-pace`), and how well: a scripted hand with real pen and key events marks an unmarked captured
 * stride at the drawing desk, aiming at the captured joints. By the quick set, and by figures that are placed
 * and pulled until what is looked at lies within 2 % of a leg: the quick set's joints, or all.
 */
export async function benchMarking(): Promise<Row[]> {
  const board = await startBoard();
  const executablePath = findChromium();
  const browser = await chromium.launch({
    args: CHROMIUM_FLAGS,
    ...(executablePath === undefined ? {} : { executablePath }),
  });
  try {
    const page = () => browser.newPage({ viewport: WINDOW });
    return [
      ...(await taps(await opened(board, await page()))),
      ...(await figures(await opened(board, await page()), "legs fitted", LEGS)),
      ...(await figures(await opened(board, await page()), "all fitted", WHOLE)),
    ];
  } finally {
    await browser.close();
    await board.stop();
  }
}

/** An unmarked sheet of the captured stride's poses, at the drawing desk with its first panel. */
async function opened(board: Board, page: Page): Promise<Marking> {
  const sheet = capturedExample(ids());
  const truth = new Map(sheet.panels.map(({ frame, marks }) => [frame, marks.side]));
  const file = sheetFileText(unmarked(sheet));
  const { sheet: id, links } = await createSheet(board.url, { from: "file", file });
  await page.goto(`${board.url}/sheet/${id}#${links.draw}`);
  await page.locator("figure[data-panel]").first().waitFor();
  const later = page.getByRole("button", { name: "Later" });
  if (await later.isVisible()) await later.click();
  const middle = { x: WINDOW.width / 2, y: WINDOW.height / 2 };
  const pace = handPace(middle, dice(SEED));
  for (const key of ["ArrowRight", "Enter", "m"]) {
    pace.look();
    pace.key();
    await page.keyboard.press(key);
  }
  return { page, pen: await takePen(page), pace, truth };
}

/** As it is before anything is known: no marks, and panels where the advance has them. */
function unmarked(sheet: Sheet): Sheet {
  const panels = sheet.panels.map((panel) => ({
    ...panel,
    place: null,
    marks: { side: {}, front: {} },
  }));
  return { ...sheet, panels };
}

async function taps(marking: Marking): Promise<Row[]> {
  const taken = await markByTaps(marking);
  const share = `${taken} of ${QUICK.length * marking.truth.size} guesses taken`;
  return rows("quick set", marking, share, QUICK);
}

/** In a practised hand's order: the body by one hip, each foot by heel and toe, then the rest. */
const LEGS: readonly JointName[] = both(["hip", "heel", "toe", "knee"]);
const WHOLE: readonly JointName[] = [
  ...both(["hip", "heel", "toe", "ankle", "ball", "knee"]),
  ...(["neck", "head"] as const),
  ...both(["shoulder", "wrist", "elbow"]),
];

async function figures(
  marking: Marking,
  name: string,
  joints: readonly JointName[],
): Promise<Row[]> {
  const pulls = await markByFigures(marking, joints);
  return rows(`figures, ${name}`, marking, `${pulls} pulls`, joints);
}

/** How far the board's marks lie from the captured ones, panel by panel back from the last. Shares of a leg. */
async function errorsOf({ page, truth }: Marking, joints: readonly JointName[]): Promise<number[]> {
  const errors: number[] = [];
  for (const frame of [...truth.keys()].reverse()) {
    const paper = await readPaper(page);
    if (paper.frame !== frame) throw new Error(`expected frame ${frame}, came to ${paper.frame}`);
    for (const joint of joints) {
      const off = offBy(truth, paper, joint);
      if (off !== null) errors.push(off);
    }
    await page.keyboard.press("ArrowLeft");
  }
  return errors;
}

async function rows(
  how: string,
  marking: Marking,
  told: string,
  joints: readonly JointName[],
): Promise<Row[]> {
  const { pace, truth } = marking;
  const errors = await errorsOf(marking, joints);
  const sorted = errors.toSorted((a, b) => a - b);
  const at = (share: number) =>
    `${(100 * (sorted[Math.floor(share * (sorted.length - 1))] ?? Number.NaN)).toFixed(2)} %`;
  return [
    {
      what: `${how}: side views of ${truth.size} panels (target 3 min)`,
      figure: `${(pace.seconds / 60).toFixed(2)} min; ${told}`,
    },
    {
      what: `${how}: ${errors.length} marks off the captured ones, of a leg`,
      figure: `half within ${at(0.5)}, nine in ten ${at(0.9)}, worst ${at(1)}`,
    },
  ];
}
