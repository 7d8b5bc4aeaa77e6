import { performance } from "node:perf_hooks";
import { type Browser, chromium, type Page } from "@playwright/test";
import { Resvg } from "@resvg/resvg-js";
import { shippedFonts } from "../../bin/shipped-fonts";
import { layOutPages, measureShipped, ONE_PAGE, pageSvg } from "../../lib/export";
import { reviewWalk } from "../../lib/gait";
import { brindleExample, walkOf } from "../../lib/sheet";
import { CHROMIUM_FLAGS, findChromium } from "../../scripts/house/chromium.mjs";
import { startBoard } from "../support/board-server";

const WIDTH = 3840; // px
const ROUNDS = 5;

type Row = { what: string; figure: string };

/**
 * The demo as a picture 3840 pixels wide, at the command line and in the page, beside a floor measured in
 * turn with it: the same rasteriser on an empty SVG file of the same size.
 */
export async function benchPrint(): Promise<Row[]> {
  return [...atTheCommandLine(), ...(await inThePage())];
}

function atTheCommandLine(): Row[] {
  let id = 0;
  const sheet = brindleExample(() => `demo${id++}`);
  const times = { whole: [] as number[], floor: [] as number[] };
  for (let round = 0; round < ROUNDS; round += 1) {
    const from = performance.now();
    const review = reviewWalk(walkOf(sheet), sheet.head.yardstick, sheet.onPurpose);
    const wish = { sheet, review, date: "", measure: measureShipped, page: ONE_PAGE };
    const [layout] = layOutPages(wish);
    if (layout === undefined) throw new Error("the demo has no page");
    rasterise(pageSvg(layout, wish));
    times.whole.push(performance.now() - from);
    const empty = performance.now();
    rasterise(emptySvg(layout.width, layout.height));
    times.floor.push(performance.now() - empty);
  }
  return rows("command line", times);
}

function rasterise(svg: string): Buffer {
  const fontFiles = shippedFonts().map(({ file }) => file);
  const font = { loadSystemFonts: false, fontFiles };
  return new Resvg(svg, { fitTo: { mode: "width", value: WIDTH }, font }).render().asPng();
}

function emptySvg(width: number, height: number): string {
  const size = `width="${width}" height="${height}" viewBox="0 0 ${width} ${height}"`;
  const paper = `<rect width="${width}" height="${height}" fill="#fff"/>`;
  return `<svg xmlns="http://www.w3.org/2000/svg" ${size}>${paper}</svg>`;
}

async function inThePage(): Promise<Row[]> {
  const board = await startBoard();
  const executablePath = findChromium();
  const browser = await chromium.launch({
    args: CHROMIUM_FLAGS,
    ...(executablePath === undefined ? {} : { executablePath }),
  });
  try {
    return rows("page", await printInTurn(browser, board.url));
  } finally {
    await browser.close();
    await board.stop();
  }
}

async function printInTurn(browser: Browser, url: string) {
  const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
  await page.goto(url);
  await page.getByRole("button", { name: "Open the demo" }).click();
  await page.locator("figure[data-panel]").first().waitFor();
  const later = page.getByRole("button", { name: "Later" });
  await later.click({ timeout: 5000 }).catch(() => undefined);
  await page.getByRole("button", { name: "Print the sheet" }).click();
  const dialog = page.getByRole("dialog");
  await dialog.getByLabel("On", { exact: true }).selectOption("");
  await dialog.getByRole("img").waitFor();
  const times = { whole: [] as number[], floor: [] as number[] };
  for (let round = 0; round < ROUNDS; round += 1) {
    const begun = page.waitForEvent("download");
    const from = performance.now();
    await dialog.getByRole("button", { name: "Download" }).click();
    await begun;
    times.whole.push(performance.now() - from);
    times.floor.push(await emptyPicture(page));
  }
  return times;
}

/** An empty SVG file through the same steps in the page: picture, canvas, PNG. Units: milliseconds. */
function emptyPicture(page: Page): Promise<number> {
  const height = Math.round(WIDTH / Math.SQRT2);
  return page.evaluate(
    async ([svg, wide, high]) => {
      const from = performance.now();
      const address = URL.createObjectURL(new Blob([svg], { type: "image/svg+xml" }));
      const picture = new Image();
      picture.src = address;
      await picture.decode();
      const canvas = document.createElement("canvas");
      canvas.width = wide;
      canvas.height = high;
      canvas.getContext("2d")?.drawImage(picture, 0, 0, wide, high);
      await new Promise((resolve) => canvas.toBlob(resolve, "image/png"));
      URL.revokeObjectURL(address);
      return performance.now() - from;
    },
    [emptySvg(WIDTH / 2, height / 2), WIDTH, height] as const,
  );
}

function rows(where: string, { whole, floor }: { whole: number[]; floor: number[] }): Row[] {
  const ratio = middle(whole) / middle(floor);
  return [
    {
      what: `demo as PNG, ${WIDTH} px wide, ${where} (target 3 s)`,
      figure: `${seconds(whole)}; ${ratio.toFixed(1)} times the floor`,
    },
    { what: `floor: an empty SVG file of that size, ${where}`, figure: seconds(floor) },
  ];
}

function middle(values: readonly number[]): number {
  return values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.NaN;
}

function seconds(milliseconds: readonly number[]): string {
  const [best, worst] = [Math.min(...milliseconds), Math.max(...milliseconds)];
  const told = [middle(milliseconds), best, worst].map((value) => (value / 1000).toFixed(2));
  return `p50 ${told[0]} s, ${told[1]} to ${told[2]} s`;
}
