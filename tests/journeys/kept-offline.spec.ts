import type { Page } from "@playwright/test";
import { LINE_DOWN } from "../support/console-words";
import { drawAcross } from "../support/draw-across";
import { expect, ownBoard, test } from "../support/journey";
import { BACK_MS, layLine } from "../support/journey-line";
import { inkOn, paperAt } from "../support/journey-papers";
import {
  allSaved,
  exportSheet,
  KEPT,
  makeLink,
  settled,
  startWalk,
  stateLine,
} from "../support/journey-sheet";

const board = ownBoard();

/** Counts how often the browser is asked not to clear what is kept in it. */
function countQuestions(): void {
  StorageManager.prototype.persist = () => {
    localStorage.setItem("asked", String(1 + Number(localStorage.getItem("asked"))));
    return Promise.resolve(true);
  };
}

/** How many strokes each panel has, by its frame. */
async function strokesOn(page: Page): Promise<Record<number, number>> {
  const { file } = await exportSheet(page);
  const counted = file.panels.map(({ frame, ink }) => [frame, ink.side.length] as const);
  return Object.fromEntries(counted.filter(([, strokes]) => strokes > 0));
}

test("every stroke is there after the network was cut and the tab closed", async ({ newcomer }) => {
  const line = await layLine(board.url);
  const page = await newcomer({ mayComplain: LINE_DOWN });
  await page.context().addInitScript(countQuestions);
  await startWalk(page, line.url, "Cut off and closed");
  await drawAcross(page, 1, 300);
  await allSaved(page);
  await line.cut();
  await expect(stateLine(page)).toHaveText("offline, all ink so far is saved");
  for (const y of [400, 500, 600]) await drawAcross(page, 1, y);
  await drawAcross(page, 4, 300);
  await expect(stateLine(page)).toHaveText(KEPT);
  const asked = () => page.evaluate(() => localStorage.getItem("asked"));
  expect(await asked()).toBe("1"); // once, when ink lay here alone for the first time
  const address = page.url();
  const again = await page.context().newPage();
  await page.close(); // struck down: nothing is asked, nothing is handed over

  await line.mend();
  await again.goto(address);
  await settled(again);
  expect(await strokesOn(again)).toEqual({ 1: 4, 4: 1 });
  expect(await inkOn(paperAt(again, 1))).toBeGreaterThan(80);

  await test.step("and with the hub, for everybody, once it says so", async () => {
    await board.restart("SIGKILL");
    await again.reload();
    await allSaved(again);
    expect(await strokesOn(again)).toEqual({ 1: 4, 4: 1 });
    expect(await keptHere(again)).toBe(0); // what is saved is not kept twice
  });
  await again.close();
});

test("every stroke is there after the browser itself fell over", async ({
  playwright,
  launchOptions,
}, info) => {
  const line = await layLine(board.url);
  const open = () =>
    playwright.chromium.launchPersistentContext(info.outputPath("profile"), {
      ...{ ...launchOptions, viewport: { width: 1440, height: 900 } },
    });
  const browser = await open();
  const page = await browser.newPage();
  await startWalk(page, line.url, "Browser gone");
  const link = await makeLink(page, "draw", "For the way back");
  await drawAcross(page, 1, 300);
  await allSaved(page);
  await line.cut();
  await expect(stateLine(page)).toHaveText(/^offline/);
  for (const y of [500, 700]) await drawAcross(page, 1, y);
  await expect(stateLine(page)).toHaveText(KEPT);
  await strikeDown(page);

  await line.mend();
  const later = await open();
  const again = await later.newPage();
  // A browser that falls over may forget its newest cookies: then it is a stranger to its own client ids.
  await again.goto(link);
  await expect(stateLine(again)).toHaveText("all ink saved", { timeout: BACK_MS });
  await expect.poll(() => keptHere(again)).toBe(0);
  expect(await strokesOn(again)).toEqual({ 1: 3 });
  await later.close();
  await line.cut();
});

/** Ends the whole browser in the middle of whatever it does. */
async function strikeDown(page: Page): Promise<void> {
  const browser = page.context();
  const session = await browser.newCDPSession(page);
  const gone = browser.waitForEvent("close");
  void session.send("Browser.crash").catch(() => {}); // nobody is left to answer
  await gone;
}

test("two pages of one sheet leave each other's unsaved ink alone", async ({ newcomer }) => {
  const line = await layLine(board.url);
  const one = await newcomer({ mayComplain: LINE_DOWN });
  await startWalk(one, line.url, "Side by side");
  const other = await one.context().newPage();
  await other.goto(one.url());
  await allSaved(other);
  await line.cut();
  for (const page of [one, other]) await expect(stateLine(page)).toHaveText(/^offline/);
  await drawAcross(one, 1, 300);
  await drawAcross(other, 1, 600);
  for (const page of [one, other]) await expect(stateLine(page)).toHaveText(KEPT);
  const address = one.url();
  await one.close();
  await line.mend();
  await expect(stateLine(other)).toHaveText("all ink saved", { timeout: BACK_MS });
  await other.reload(); // the page that was closed had its stroke lying here
  await allSaved(other);
  expect(await strokesOn(other)).toEqual({ 1: 2 });
  await expect.poll(() => keptHere(other)).toBe(0);
  expect(other.url()).toBe(address);
});

test("a browser that keeps nothing says that the page must stay open", async ({ newcomer }) => {
  const line = await layLine(board.url);
  const page = await newcomer({ mayComplain: LINE_DOWN });
  // As in a browser whose storage is shut: opening any database fails.
  await page.addInitScript(() => {
    IDBFactory.prototype.open = () => {
      throw new DOMException("the store is shut", "SecurityError");
    };
  });
  await startWalk(page, line.url, "Nothing kept");
  await line.cut();
  await expect(stateLine(page)).toHaveText(/^offline/);
  await drawAcross(page, 1, 300);
  await expect(stateLine(page)).toHaveText("not saved, stay on this page");
  await line.mend();
  await expect(stateLine(page)).toHaveText("all ink saved", { timeout: BACK_MS });
  expect(await strokesOn(page)).toEqual({ 1: 1 });
});

/** How many pieces of work lie in this browser's own store. */
function keptHere(page: Page): Promise<number> {
  return page.evaluate(
    () =>
      new Promise<number>((resolve, reject) => {
        const opening = indexedDB.open("heelstrip");
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const db = opening.result;
          const count = db.transaction("work").objectStore("work").count();
          count.onsuccess = () => {
            resolve(count.result);
            db.close();
          };
        };
      }),
  );
}
