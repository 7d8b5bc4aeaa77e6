import { type Browser, type CDPSession, chromium, type Page } from "@playwright/test";
import { CHROMIUM_FLAGS, findChromium } from "../../scripts/house/chromium.mjs";
import { startBoard } from "../support/board-server";
import { createSheet } from "../support/hub-under-test";
import { type Crowd, crowdedSheetText } from "./crowded-sheet";
import { readTimes, resetTimes, timePage } from "./time-page";

const CROWDS = [
  { panels: 48, strokesAPanel: 150, pointsAStroke: 40 },
  { panels: 200, strokesAPanel: 30, pointsAStroke: 40 },
] as const;
const WINDOW = { width: 1600, height: 900 } as const;
const STROKES = 8;
const MOVES = 60; // a stroke, 120 a second
const MOVE_GAP_MS = 8;

type Row = { what: string; figure: string };

/**
 * The pen on a full board, as built: real pen events through the browser's own input, on the strip and
 * at the drawing desk. Frame gaps are those of headless Chromium without a GPU.
 */
export async function benchPen(): Promise<Row[]> {
  const board = await startBoard();
  const executablePath = findChromium();
  const browser = await chromium.launch({
    args: CHROMIUM_FLAGS,
    ...(executablePath === undefined ? {} : { executablePath }),
  });
  try {
    const rows: Row[] = [];
    for (const crowd of CROWDS) rows.push(...(await penOn(browser, board.url, crowd)));
    return rows;
  } finally {
    await browser.close();
    await board.stop();
  }
}

/** One sheet, from its opening to the drawing desk, in a page of its own. */
async function penOn(browser: Browser, url: string, crowd: Crowd): Promise<Row[]> {
  const page = await browser.newPage({ viewport: WINDOW });
  try {
    const file = crowdedSheetText(crowd);
    const { sheet, links } = await createSheet(url, { from: "file", file });
    await timePage(page);
    const opened = await open(page, `${url}/sheet/${sheet}#${links.draw}`);
    const idle = await rest(page);
    const strip = await draw(page, "figure[data-panel][data-view=side]");
    await page.keyboard.press("Enter"); // the drawing desk, on the panel just drawn on
    await settled(page);
    const desk = await draw(page, "figure[data-panel][data-view=side]");
    await page.keyboard.press("g"); // lines round strokes, and pulls at what they gathered
    const gathering = await draw(page, "figure[data-panel][data-view=side]");
    const rows = [
      { what: "sheet", figure: kilobytes(file) },
      ...opened,
      { what: "frames at rest", figure: idle },
      ...strip.map(({ what, figure }) => ({ what: `strip: ${what}`, figure })),
      ...desk.map(({ what, figure }) => ({ what: `desk: ${what}`, figure })),
      ...gathering.map(({ what, figure }) => ({ what: `desk, gathering: ${what}`, figure })),
    ];
    const name = `${crowd.panels} panels × ${crowd.strokesAPanel} strokes`;
    return rows.map(({ what, figure }) => ({ what: `${name}: ${what}`, figure }));
  } finally {
    await page.close();
  }
}

/** From the strip's first appearance to the last paper on screen being painted. */
async function open(page: Page, address: string): Promise<Row[]> {
  await page.goto(address);
  await page.locator("figure[data-panel]").first().waitFor();
  const since = await page.evaluate(() => {
    window.benchTimes = { events: [], frames: [], gaps: [] };
    return performance.now();
  });
  await settled(page);
  const until = await page.evaluate(() => performance.now());
  const { frames, gaps } = await readTimes(page);
  return [
    { what: "open: strip there → all papers painted", figure: `${(until - since).toFixed(0)} ms` },
    { what: "open: script in a frame", figure: spread(frames) },
    { what: "open: from frame to frame", figure: spread(gaps) },
  ];
}

/** Resolves once every paper on screen shows its ink. */
async function settled(page: Page): Promise<void> {
  await page.waitForFunction(() => {
    const papers = [...document.querySelectorAll("figure[data-panel]")].filter((paper) => {
      const seen = paper.closest("section")?.getBoundingClientRect();
      const { left, right, top, bottom } = paper.getBoundingClientRect();
      if (seen === undefined) return false;
      return right > seen.left && left < seen.right && bottom > seen.top && top < seen.bottom;
    });
    const painted = (paper: Element) =>
      [...paper.querySelectorAll("canvas")].some(
        (canvas) => Math.abs(canvas.width - canvas.clientWidth * devicePixelRatio) < 2,
      );
    return papers.length > 0 && papers.every(painted);
  });
}

async function rest(page: Page): Promise<string> {
  await resetTimes(page);
  await page.waitForFunction(() => window.benchTimes.gaps.length >= 120);
  return spread((await readTimes(page)).gaps);
}

async function draw(page: Page, selector: string): Promise<Row[]> {
  const box = await page.locator(selector).first().boundingBox();
  if (box === null) throw new Error("there is no paper to draw on");
  const pen = await page.context().newCDPSession(page);
  await scribble(pen, box, 0); // warm
  await resetTimes(page);
  for (let stroke = 1; stroke <= STROKES; stroke++) await scribble(pen, box, stroke);
  const { events, frames, gaps } = await readTimes(page);
  return [
    { what: "handlers of a pointermove", figure: spread(events) },
    { what: "script in a frame", figure: spread(frames) },
    { what: "from frame to frame", figure: spread(gaps) },
  ];
}

interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** One stroke over the paper, at a pen's pace: events are sent on time, not when the last was done. */
async function scribble(pen: CDPSession, { x, y, width, height }: Box, row: number): Promise<void> {
  const top = y + height * (0.15 + (0.7 * row) / (STROKES + 1));
  const at = (step: number) => ({
    x: x + width * (0.1 + (0.8 * step) / MOVES),
    y: Math.min(innerEdge(y, height), top + Math.sin(step / 4) * height * 0.04),
    pointerType: "pen" as const,
    force: 0.25 + 0.5 * Math.sin((Math.PI * step) / MOVES),
  });
  const button = { button: "left", buttons: 1 } as const;
  await pen.send("Input.dispatchMouseEvent", {
    type: "mousePressed",
    ...button,
    clickCount: 1,
    ...at(0),
  });
  const sent: Promise<unknown>[] = [];
  for (let step = 1; step <= MOVES; step++) {
    sent.push(pen.send("Input.dispatchMouseEvent", { type: "mouseMoved", ...button, ...at(step) }));
    await new Promise((resolve) => setTimeout(resolve, MOVE_GAP_MS));
  }
  await Promise.all(sent);
  await pen.send("Input.dispatchMouseEvent", {
    type: "mouseReleased",
    button: "left",
    clickCount: 1,
    ...at(MOVES),
  });
}

const innerEdge = (y: number, height: number) => y + height - 2;

const LATE_MS = 20; // a 60 Hz screen shows a frame every 16.7 ms: above this one was missed

function spread(values: readonly number[]): string {
  const sorted = [...values].sort((a, b) => a - b);
  const at = (share: number) => {
    const index = Math.min(sorted.length - 1, Math.floor(sorted.length * share));
    return (sorted[index] ?? Number.NaN).toFixed(2);
  };
  const late = sorted.filter((value) => value > LATE_MS).length;
  return `p50 ${at(0.5)}, p95 ${at(0.95)}, max ${at(1)} ms; ${late} of ${sorted.length} over ${LATE_MS} ms`;
}

function kilobytes(text: string): string {
  return `${Math.round(text.length / 1024)} kB as a file`;
}
