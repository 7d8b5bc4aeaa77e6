import { type CDPSession, chromium, type Page } from "@playwright/test";
import { CHROMIUM_FLAGS, findChromium } from "../../scripts/house/chromium.mjs";
import { startBoard } from "../support/board-server";
import { createSheet } from "../support/hub-under-test";
import { takePen } from "../support/pen";

const STROKES = 10_000;
const POINTS = 6; // a hatching stroke
const A_BATCH = 100; // between two looks at whether the board keeps up
const SAVED_MS = 120_000; // the hub holds back whoever sends more than it takes

interface Row {
  readonly what: string;
  readonly figure: string;
}

/**
 * What the page keeps in memory: before anything is drawn, after ten thousand strokes by a real pen over
 * all papers of a strip, after as many steps of undo, and on the start page when the sheet is left.
 *
 * Units: MB of 1,000,000 bytes of JavaScript heap in use, right after a collection
 */
export async function benchMemory(): Promise<Row[]> {
  const board = await startBoard();
  const executablePath = findChromium();
  const browser = await chromium.launch({
    args: CHROMIUM_FLAGS,
    ...(executablePath === undefined ? {} : { executablePath }),
  });
  try {
    const { sheet, links } = await createSheet(board.url);
    const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
    await page.goto(`${board.url}/sheet/${sheet}#${links.draw}`);
    await page.locator("figure[data-panel]").first().waitFor();
    const browserSide = await page.context().newCDPSession(page);
    const heap = () => heapInUse(browserSide);
    const empty = await heap();
    await hatch(page);
    await saved(page);
    const drawn = await heap();
    await undoAll(page);
    await saved(page);
    const undone = await heap();
    await page.goto(board.url);
    await page.getByRole("button", { name: "Lay out the strip" }).waitFor();
    const left = await heap();
    const count = STROKES.toLocaleString("en-GB");
    return [
      { what: "heap, an empty strip", figure: inMB(empty) },
      { what: `heap, ${count} strokes drawn`, figure: inMB(drawn) },
      { what: "of it a stroke", figure: `${((drawn - empty) / STROKES / 1000).toFixed(2)} kB` },
      { what: "heap, all of them undone", figure: inMB(undone) },
      { what: "heap, the sheet left", figure: inMB(left) },
    ];
  } finally {
    await browser.close();
    await board.stop();
  }
}

async function hatch(page: Page): Promise<void> {
  const pen = await takePen(page);
  const papers = await page.locator("figure[data-panel]").all();
  const boxes = await Promise.all(papers.map((paper) => paper.boundingBox()));
  for (let stroke = 0; stroke < STROKES; stroke += 1) {
    const box = boxes[stroke % boxes.length];
    if (box === undefined || box === null) continue;
    const row = Math.floor(stroke / boxes.length);
    const x = box.x + box.width * (0.1 + 0.6 * ((row % 29) / 29));
    const y = box.y + box.height * (0.1 + 0.7 * ((row % 31) / 31));
    const way = Array.from({ length: POINTS }, (_, step) => ({ x: x + step * 3, y: y + step }));
    await pen.draw(way);
    if (stroke % A_BATCH === A_BATCH - 1) await rest(page);
  }
}

async function undoAll(page: Page): Promise<void> {
  for (let step = 0; step < STROKES; step += 1) {
    await page.keyboard.press("Control+z");
    if (step % A_BATCH === A_BATCH - 1) await rest(page);
  }
}

/** The page has come round to a frame: what was sent so far is worked off. */
const rest = (page: Page) =>
  page.evaluate(() => new Promise<void>((done) => requestAnimationFrame(() => done())));

const saved = (page: Page) =>
  page.getByText("all ink saved").first().waitFor({ timeout: SAVED_MS });

async function heapInUse(browserSide: CDPSession): Promise<number> {
  await browserSide.send("HeapProfiler.collectGarbage");
  const { usedSize } = await browserSide.send("Runtime.getHeapUsage");
  return usedSize;
}

const inMB = (bytes: number): string => `${(bytes / 1e6).toFixed(1)} MB`;
