import { gzipSync } from "node:zlib";
import { type Browser, chromium } from "@playwright/test";
import { CHROMIUM_FLAGS, findChromium } from "../../scripts/house/chromium.mjs";
import { startBoard } from "../support/board-server";

/**
 * What a browser has to load before a page works: the scripts it really asked for, compressed.
 *
 * Units: kB of 1,000 bytes, gzip at its default level
 */
export async function benchWeight(): Promise<{ what: string; figure: string }[]> {
  const board = await startBoard();
  const executablePath = findChromium();
  const browser = await chromium.launch({
    args: CHROMIUM_FLAGS,
    ...(executablePath === undefined ? {} : { executablePath }),
  });
  try {
    const start = await scriptsOf(browser, board.url, "form");
    const made = await fetch(`${board.url}/api/sheets`, {
      method: "POST",
      headers: { "content-type": "application/json", origin: board.url },
      body: "{}",
    });
    const { sheet, links } = (await made.json()) as { sheet: string; links: { owner: string } };
    const address = `${board.url}/sheet/${sheet}#${links.owner}`;
    const strip = await scriptsOf(browser, address, "figure[data-panel]");
    const own = new Map([...strip].filter(([path]) => !start.has(path)));
    return [
      { what: "start page, first-load JavaScript, gzip", figure: `${kB(start)} kB (target ≤ 160)` },
      { what: "board, first-load JavaScript, gzip", figure: `${kB(strip)} kB` },
      { what: "of it the board's own, gzip", figure: `${kB(own)} kB (target ≤ 200)` },
    ];
  } finally {
    await browser.close();
    await board.stop();
  }
}

/** Path → gzip bytes of every script that one page asked for until it stood. */
async function scriptsOf(
  browser: Browser,
  address: string,
  stands: string,
): Promise<ReadonlyMap<string, number>> {
  const page = await browser.newPage();
  const sizes = new Map<string, number>();
  const reading: Promise<void>[] = [];
  page.on("response", (response) => {
    if (response.request().resourceType() !== "script") return;
    const path = new URL(response.url()).pathname;
    reading.push(response.body().then((body) => void sizes.set(path, gzipSync(body).length)));
  });
  await page.goto(address);
  await page.waitForSelector(stands);
  await page.waitForLoadState("networkidle");
  await Promise.all(reading);
  await page.close();
  return sizes;
}

function kB(sizes: ReadonlyMap<string, number>): string {
  const bytes = [...sizes.values()].reduce((sum, size) => sum + size, 0);
  return (bytes / 1000).toFixed(1);
}
