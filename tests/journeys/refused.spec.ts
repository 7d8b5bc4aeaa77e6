import { join } from "node:path";
import type { Locator, Page } from "@playwright/test";
import Database from "libsql";
import type { SheetFile } from "../../lib/sheet";
import { MESSAGE, SYNC } from "../../shared/protocol";
import { LINE_DOWN } from "../support/console-words";
import { drawAcross } from "../support/draw-across";
import { expect, ownBoard, test } from "../support/journey";
import { BACK_MS, layLine } from "../support/journey-line";
import {
  allSaved,
  contentOf,
  exportSheet,
  KEPT,
  makeLink,
  settled,
  startWalk,
  stateLine,
} from "../support/journey-sheet";

const board = ownBoard();

const strokesIn = (file: SheetFile) => file.panels.flatMap(({ ink }) => ink.side).length;
const noteOn = (page: Page) => page.getByRole("region", { name: "What became of your work" });

async function changeRole(owner: Page, from: string, label: string, to: string): Promise<void> {
  await owner.getByRole("button", { name: "Invite" }).click();
  const dialog: Locator = owner.getByRole("dialog", { name: "Invite to this sheet" });
  await dialog.getByLabel(`What the ${from} link “${label}” may do`).selectOption(to);
  await expect(dialog.getByLabel(`What the ${to} link “${label}” may do`)).toBeVisible();
  await dialog.getByRole("button", { name: "Close" }).click();
}

test("a change that the hub could not read is done again on the sheet opened afresh", async ({
  newcomer,
}) => {
  const page = await newcomer();
  let cutShort = false;
  await page.routeWebSocket(/\/sync\/.*\/drawing/, (near) => {
    const far = near.connectToServer();
    near.onMessage((frame) => {
      const isUpdate =
        typeof frame !== "string" && frame[0] === MESSAGE.sync && frame[1] === SYNC.update;
      far.send(isUpdate && cutShort ? frame.subarray(0, -9) : frame);
      if (isUpdate) cutShort = false;
    });
  });
  await startWalk(page, board.url, "Read badly");
  await drawAcross(page, 1, 300);
  await allSaved(page);
  cutShort = true;
  await drawAcross(page, 1, 500);
  await expect(noteOn(page)).toContainText(
    "What was not saved yet was done again on it: 1 stroke.",
  );
  await allSaved(page);
  await page.reload();
  await allSaved(page);
  expect(strokesIn((await exportSheet(page)).file)).toBe(2);
});

test("a role that falls and rises is followed at once, on the line that is open", async ({
  newcomer,
}) => {
  const owner = await newcomer();
  await startWalk(owner, board.url, "Lowered");
  const address = await makeLink(owner, "draw", "Gus");
  const guest = await newcomer();
  await guest.goto(address);
  await settled(guest);
  const lines: string[] = [];
  guest.on("websocket", (socket) => lines.push(socket.url()));
  const tool = guest
    .getByRole("navigation", { name: "Tray" })
    .getByRole("button", { name: "Draw D", exact: true });
  await changeRole(owner, "draw", "Gus", "view");
  await expect(stateLine(guest)).toHaveText("view only");
  await expect(tool).toHaveCount(0);
  await changeRole(owner, "view", "Gus", "draw");
  await expect(tool).toBeVisible();
  await drawAcross(guest, 1, 300);
  await allSaved(guest);
  expect(lines).toEqual([]);
});

test("what was drawn offline without the right to is handed over as a file", async ({
  newcomer,
}) => {
  const owner = await newcomer();
  await startWalk(owner, board.url, "Lowered meanwhile");
  const line = await layLine(board.url);
  const address = (await makeLink(owner, "draw", "Gus")).replace(board.url, line.url);
  const guest = await newcomer({ mayComplain: LINE_DOWN });
  await guest.goto(address);
  await settled(guest);
  await line.cut();
  await expect(stateLine(guest)).toHaveText(/^offline/);
  await drawAcross(guest, 1, 300);
  await expect(stateLine(guest)).toHaveText(KEPT);
  await changeRole(owner, "draw", "Gus", "view");
  await line.mend();
  const note = noteOn(guest);
  await expect(note).toContainText("This could not be kept on the sheet: 1 stroke.", {
    timeout: BACK_MS,
  });
  await expect(note).toContainText("Your link no longer lets you change it.");
  await expect(stateLine(guest)).toHaveText("not saved, a change was refused");
  const begun = guest.waitForEvent("download");
  await note.getByRole("button", { name: "Save it as a sheet file" }).click();
  const file = JSON.parse((await contentOf(await begun)).toString("utf8")) as SheetFile;
  expect(strokesIn(file)).toBe(1);
  await note.getByRole("button", { name: "Throw it away" }).click();
  await note.getByRole("button", { name: "Throw it away for good" }).click();
  await expect(note).toHaveCount(0);
  await expect(stateLine(guest)).toHaveText("view only");
  expect(strokesIn((await exportSheet(owner)).file)).toBe(0); // nothing of it ever reached the sheet
});

test("a sheet that was put back keeps what was drawn here and not saved", async ({ newcomer }) => {
  const line = await layLine(board.url);
  const page = await newcomer({ mayComplain: LINE_DOWN });
  await startWalk(page, line.url, "Put back");
  await drawAcross(page, 1, 300);
  await allSaved(page);
  await line.cut();
  await expect(stateLine(page)).toHaveText(/^offline/);
  await drawAcross(page, 1, 500);
  await expect(stateLine(page)).toHaveText(KEPT);
  await board.restart("SIGTERM", (folder) => {
    const db = new Database(join(folder, "heelstrip.db"));
    db.exec("update documents set generation = generation + 1");
    db.close();
  });
  await line.mend();
  const note = noteOn(page);
  await expect(note).toContainText("put back to an earlier state", { timeout: BACK_MS });
  await expect(note).toContainText("done again on it: 1 stroke.");
  await note.getByRole("button", { name: "Close this note" }).click();
  await allSaved(page);
  await page.reload();
  await allSaved(page);
  expect(strokesIn((await exportSheet(page)).file)).toBe(2);
});
