import type { Page } from "@playwright/test";
import type { SheetFile } from "../../lib/sheet";
import { type HubClient, openPage } from "../support/hub-client";
import { expect, ownBoard, test } from "../support/journey";
import { BACK_MS, layLine } from "../support/journey-line";
import { across, inkOn, onScreen, paperAt } from "../support/journey-papers";
import {
  allSaved,
  contentOf,
  exportSheet,
  makeLink,
  startWalk,
  stateLine,
} from "../support/journey-sheet";
import { takePen } from "../support/pen";

const board = ownBoard();

/** What a browser says on its console of a line that is down. */
const LINE_DOWN = /WebSocket connection to|net::ERR_(CONNECTION|EMPTY_RESPONSE)/;

/** Somebody's program on the sheet that is open in a page, let in by the page's own cookie. */
async function programBeside(page: Page): Promise<HubClient> {
  const sheet = /\/sheet\/([^/#]+)/.exec(page.url())?.[1] ?? "";
  const cookies = await page.context().cookies();
  const cookie = cookies.map(({ name, value }) => `${name}=${value}`).join("; ");
  return openPage({ url: board.url, sheet, cookie });
}

test("whoever's link is withdrawn is told so, and has nothing left to draw with", async ({
  newcomer,
}) => {
  const owner = await newcomer();
  await startWalk(owner, board.url, "Withdrawn");
  const address = await makeLink(owner, "draw", "Gus");
  const guest = await newcomer();
  await guest.goto(address);
  await allSaved(guest);
  const paper = paperAt(guest, 1);
  const pen = await takePen(guest);
  await pen.draw(await onScreen(paper, across(300)));
  await allSaved(guest);
  const drawn = await inkOn(paper);

  await owner.getByRole("button", { name: "Invite" }).click();
  const dialog = owner.getByRole("dialog", { name: "Invite to this sheet" });
  await dialog.getByRole("button", { name: "Revoke the draw link “Gus”" }).click();
  await dialog.getByRole("button", { name: "Revoke it" }).click();
  await expect(stateLine(guest)).toHaveText("closed: the link was withdrawn");
  const tray = guest.getByRole("navigation", { name: "Tray" });
  await expect(tray).toContainText("Nothing drawn here would be saved any more");
  await expect(tray.getByRole("button", { name: "Rub out" })).toHaveCount(0);
  await pen.draw(await onScreen(paper, across(700)));
  expect(await inkOn(paper)).toBe(drawn);
});

test("ink drawn offline outlives the link that was withdrawn meanwhile", async ({ newcomer }) => {
  const owner = await newcomer();
  await startWalk(owner, board.url, "Withdrawn meanwhile");
  const line = await layLine(board.url);
  const address = (await makeLink(owner, "draw", "Gus")).replace(board.url, line.url);
  const guest = await newcomer({ mayComplain: /WebSocket connection to|net::ERR_|status of 404/ });
  await guest.goto(address);
  await allSaved(guest);
  await guest.getByRole("button", { name: "Help" }).click(); // a hand at the board fetches the pages over it
  await expect(guest.getByRole("dialog", { name: "Help" })).toContainText("readings");
  await guest.keyboard.press("Escape");
  await line.cut();
  await expect(stateLine(guest)).toHaveText(/^offline/);
  await (await takePen(guest)).draw(await onScreen(paperAt(guest, 1), across(300)));
  await expect(stateLine(guest)).toHaveText("offline, kept on this machine");

  await owner.getByRole("button", { name: "Invite" }).click();
  const dialog = owner.getByRole("dialog", { name: "Invite to this sheet" });
  await dialog.getByRole("button", { name: "Revoke the draw link “Gus”" }).click();
  await dialog.getByRole("button", { name: "Revoke it" }).click();
  await expect(dialog).toContainText("closed ");
  await line.mend();
  await expect(stateLine(guest)).toHaveText(
    "not all ink saved, closed: this browser is no longer let in",
    { timeout: BACK_MS },
  );
  const tries: string[] = [];
  guest.on("request", (request) => tries.push(request.url()));
  guest.on("websocket", (socket) => tries.push(socket.url()));
  const { file } = await exportSheet(guest); // what could not be handed over can be taken along
  expect(file.panels.flatMap(({ ink }) => ink.side)).toHaveLength(1);
  await inkOn(paperAt(guest, 1));
  expect(tries.filter((url) => !url.startsWith("blob:"))).toEqual([]);

  await test.step("it is offered as a file on the board, and on the page that says the door is shut", async () => {
    const board = guest.getByRole("region", { name: "What became of your work" });
    await expect(board).toContainText("This could not be kept on the sheet: 1 stroke.");
    guest.once("dialog", (leaving) => void leaving.accept()); // leaving is warned of
    await guest.reload();
    await expect(guest.getByRole("heading", { name: /no way into the sheet/ })).toBeVisible();
    const kept = guest.getByRole("region", { name: "What lies in this browser" });
    await expect(kept).toContainText("never reached the server: 1 stroke.");
    const begun = guest.waitForEvent("download");
    await kept.getByRole("button", { name: "Save it as a sheet file" }).click();
    const saved = JSON.parse((await contentOf(await begun)).toString("utf8")) as SheetFile;
    expect(saved.panels.flatMap(({ ink }) => ink.side)).toHaveLength(1);
    expect(saved.head.title).toBe("Withdrawn meanwhile");
  });

  await test.step("and another link brings it onto the sheet", async () => {
    await dialog.getByRole("button", { name: "Close" }).click();
    const another = await makeLink(owner, "draw", "Gus again");
    await guest.goto(another.replace(board.url, line.url));
    await allSaved(guest);
    await expect.poll(() => inkOn(paperAt(owner, 1))).toBeGreaterThan(20);
    await guest.reload();
    await allSaved(guest);
    await expect(guest.getByRole("region", { name: "What became of your work" })).toHaveCount(0);
  });
  await line.cut();
});

test("a sheet that a newer version made is not opened, and the page says what to do", async ({
  newcomer,
}) => {
  const page = await newcomer({ mayComplain: LINE_DOWN });
  await startWalk(page, board.url, "From the future");
  await allSaved(page);
  const program = await programBeside(page);
  program.doc.getMap("sheet").set("schema", 99);
  await program.allSaved();
  await board.restart();
  await expect(stateLine(page)).toHaveText("closed: made by a newer Heelstrip", {
    timeout: BACK_MS,
  });
  await page.reload();
  await expect(
    page.getByRole("heading", { name: "closed: made by a newer Heelstrip" }),
  ).toBeVisible();
  await expect(page.getByText(/update this server to open it/)).toBeVisible();
});

test("what could not be read is counted in the margin, and goes when it does", async ({
  newcomer,
}) => {
  const page = await newcomer();
  await startWalk(page, board.url, "Half read");
  await allSaved(page);
  const margin = page.getByRole("region", { name: "Remarks" });
  const program = await programBeside(page);
  program.draw("abcdefgh", Uint8Array.of(255, 1));
  await expect(margin).toContainText(
    "1 stroke or mark on this sheet could not be read and is not shown; it is kept.",
  );
  program.draw("ijklmnop", "no ink at all");
  await expect(margin).toContainText("2 strokes or marks on this sheet could not be read");
  for (const id of ["abcdefgh", "ijklmnop"]) program.doc.getMap("strokes").delete(id);
  await expect(margin).not.toContainText("could not be read");
  await program.close();
});

test("links that cannot be fetched are asked for again", async ({ newcomer }) => {
  const line = await layLine(board.url);
  const page = await newcomer({ mayComplain: LINE_DOWN });
  await startWalk(page, line.url, "Unanswered");
  await allSaved(page);
  const dialog = page.getByRole("dialog", { name: "Invite to this sheet" });
  await page.getByRole("button", { name: "Invite" }).click();
  await dialog.getByRole("button", { name: "Close" }).click(); // the page is at hand from here on, its links are not
  await line.cut();
  await page.getByRole("button", { name: "Invite" }).click();
  await expect(dialog).toContainText("The server does not answer, so the links cannot be shown.");
  await line.mend();
  await dialog.getByRole("button", { name: "Try again" }).click();
  await expect(dialog.getByRole("button", { name: /^Revoke the draw link/ })).toBeVisible();
  await line.cut();
});

test("a file too large for a sheet is refused by its size alone", async ({ newcomer }) => {
  const page = await newcomer();
  await page.goto(board.url);
  await page.getByLabel("Sheet file to open").setInputFiles({
    ...{ name: "film.json", mimeType: "application/json" },
    buffer: Buffer.alloc(16 * 1024 * 1024 + 1, " "),
  });
  await expect(page.getByRole("alert").first()).toContainText(
    "the file is 16.0 MiB large, and a sheet file has at most 16 MiB",
  );
});
