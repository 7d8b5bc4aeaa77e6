import { join } from "node:path";
import type { Locator, Page } from "@playwright/test";
import Database from "libsql";
import * as Y from "yjs";
import { encodeSync, MESSAGE, SYNC } from "../../shared/protocol";
import { type Board, startBoard } from "../support/board-server";
import { ask, createSheet, enter } from "../support/hub-under-test";
import { expect, test } from "../support/journey";
import { BACK_MS, layLine } from "../support/journey-line";
import { across, onScreen, paperAt } from "../support/journey-papers";
import { settled, stateLine } from "../support/journey-sheet";
import { takePen } from "../support/pen";
import { readOnDisk, type SheetOnDisk } from "../support/sheet-on-disk";
import { type SmallDisk, smallDisk } from "../support/small-disk";
import { watchLine } from "../support/watched-line";

const LINE_DOWN = /WebSocket connection to|net::ERR_|status of 40/;
const SILENCE_MS = 31_000; // a line that is silent for longer is dropped by the page

let tight: SmallDisk | null = null;
let board: Board;
let disk: SheetOnDisk | null = null;

test.beforeAll(async () => {
  tight = smallDisk(24); // here, for this file is also read by whoever only lists the journeys
  board = await startBoard(tight === null ? {} : { DATA_DIR: join(tight.place, "data") });
});
test.afterAll(async () => {
  disk?.close();
  await board.stop();
  tight?.remove();
});

/** The page's clock can be put forward, so that half a minute of silence need not be waited for. */
function withMovableClock(): void {
  const now = Date.now.bind(Date);
  Date.now = () => now() + (Number(sessionStorage.getItem("ahead")) || 0);
}

/** Once armed, the page's next update reaches the hub as something that no sheet holds. */
async function spoilOne(page: Page): Promise<{ arm(): void }> {
  const foreign = new Y.Doc();
  foreign.getMap("elsewhere").set("any", 1);
  const spoilt = encodeSync(SYNC.update, Y.encodeStateAsUpdate(foreign));
  let armed = false;
  await page.routeWebSocket(/\/sync\/.*\/drawing/, (near) => {
    const far = near.connectToServer();
    near.onMessage((frame) => {
      const isUpdate =
        typeof frame !== "string" && frame[0] === MESSAGE.sync && frame[1] === SYNC.update;
      far.send(isUpdate && armed ? Buffer.from(spoilt) : frame);
      if (isUpdate) armed = false;
    });
  });
  return {
    arm() {
      armed = true;
    },
  };
}

test("the state line never lies, whatever fails", async ({ newcomer }) => {
  const { sheet, links } = await createSheet(board.url, { title: "Nothing but the truth" });
  disk = readOnDisk(board.dataDir, sheet);
  const owner = await enter(board.url, sheet, links.owner);
  const line = await layLine(board.url);
  const page = await newcomer({ mayComplain: LINE_DOWN });
  await page.addInitScript(withMovableClock);
  const watch = await watchLine(page, () => disk);
  const spoiler = await spoilOne(page);
  await page.goto(`${line.url}/sheet/${sheet}#${links.draw}`);
  await settled(page);
  const says = (words: string | RegExp) =>
    expect(stateLine(page)).toHaveText(words, { timeout: BACK_MS });
  const draw = drawer(page, paperAt(page, 1));
  let drawn = 0;
  const strokes = async (count: number) => {
    for (let n = 0; n < count; n++) await draw(200 + 20 * drawn++);
  };
  const saved = async () => {
    await says("all ink saved");
    expect(watch.lies).toEqual([]);
    expect(disk?.strokes()).toBe(drawn);
    return watch.said();
  };
  await strokes(2);
  await saved();

  await test.step("the network is cut while a stroke is drawn", async () => {
    const pen = await takePen(page);
    const [first, ...way] = await onScreen(paperAt(page, 1), across(200 + 20 * drawn++));
    if (first !== undefined) await pen.down(first);
    await pen.move(way.slice(0, 10));
    await says("pen down…");
    await line.cut();
    await says("not saved, pen down");
    await pen.move(way.slice(10));
    await pen.up();
    await says("offline, kept on this machine");
    await strokes(2);
    await line.mend();
    await saved();
  });

  await test.step("the hub is struck down, and comes back", async () => {
    const back = board.restart("SIGKILL");
    await strokes(3);
    await back;
    await saved();
  });

  await test.step("another process holds the database", async () => {
    const letGo = disk?.hold();
    const before = disk?.strokes();
    await strokes(2);
    await says("saving…");
    await expect(page).toHaveTitle(/Nothing but the truth/);
    expect(disk?.strokes()).toBe(before);
    letGo?.();
    await saved();
  });

  await test.step("the disk is full", async () => {
    if (tight === null)
      return test
        .info()
        .annotations.push({ type: "left out", description: "no small disk can be mounted here" });
    const makeRoom = tight.fill();
    await strokes(2);
    await says("the server cannot write, kept on this machine");
    makeRoom();
    await saved();
  });

  await test.step("the line stands open and nothing passes", async () => {
    line.holdUp();
    await strokes(2);
    await says("saving…");
    await page.evaluate((ms) => sessionStorage.setItem("ahead", String(ms)), SILENCE_MS);
    await says("offline, kept on this machine");
    line.letPass();
    await saved();
  });

  await test.step("the hub refuses what is in a change", async () => {
    spoiler.arm();
    await strokes(1);
    await says("not saved, a change was refused");
    const note = page.getByRole("region", { name: "What became of your work" });
    await expect(note).toContainText("The server does not know what it is.");
    await note.getByRole("button", { name: "Throw it away" }).click();
    watch.forgive(1); // its person says so with the next click
    drawn--;
    await note.getByRole("button", { name: "Throw it away for good" }).click();
    await saved();
  });

  await test.step("the sheet is put back to an older state", async () => {
    await line.cut();
    await strokes(1);
    await says("offline, kept on this machine");
    await board.restart("SIGTERM", raiseGeneration);
    await line.mend();
    const note = page.getByRole("region", { name: "What became of your work" });
    await expect(note).toContainText("put back to an earlier state", { timeout: BACK_MS });
    await note.getByRole("button", { name: "Close this note" }).click();
    await saved();
  });

  await test.step("the link is withdrawn with ink on its way", async () => {
    line.holdUp();
    await strokes(1);
    await says("saving…");
    const { body } = await ask(board.url, `/api/sheets/${sheet}/links`, { cookie: owner });
    const mine = (body as { links: { link: string; role: string }[] }).links.find(
      ({ role }) => role === "draw",
    );
    await ask(board.url, `/api/sheets/${sheet}/links/${mine?.link}`, {
      method: "DELETE",
      cookie: owner,
    });
    line.letPass();
    await says(/^not all ink saved, closed: /);
    const note = page.getByRole("region", { name: "What became of your work" });
    await expect(note).toContainText("This could not be kept on the sheet: 1 stroke.");
    expect(watch.lies).toEqual([]);
    expect(disk?.strokes()).toBe(drawn - 1);
  });
  await line.cut();
});

function raiseGeneration(folder: string): void {
  const db = new Database(join(folder, "heelstrip.db"));
  db.exec("update documents set generation = generation + 1");
  db.close();
}

/** Draws a line across a paper at a height, panel units. */
function drawer(page: Page, paper: Locator) {
  return async (y: number) => {
    const pen = await takePen(page);
    await pen.draw(await onScreen(paper, across(y)));
  };
}
