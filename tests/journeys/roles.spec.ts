import { REFUSAL } from "../support/console-words";
import { expect, ownBoard, test } from "../support/journey";
import { across, inkOn, onScreen, paperAt } from "../support/journey-papers";
import {
  allSaved,
  exportSheet,
  framesOf,
  makeLink,
  startWalk,
  stateLine,
} from "../support/journey-sheet";
import { takePen } from "../support/pen";

const board = ownBoard();

test("a view link looks and does not draw", async ({ newcomer }) => {
  const owner = await newcomer();
  await startWalk(owner, board.url, "Looked at");
  const address = await makeLink(owner, "view");
  const viewer = await newcomer();
  await viewer.goto(address);
  await expect(stateLine(viewer)).toHaveText("view only");
  const tray = viewer.getByRole("navigation", { name: "Tray" });
  await expect(tray).toContainText("You are here to look: this link does not draw.");
  for (const name of ["Draw", "Rub out", "Mark joints", "fine pencil", "Undo"]) {
    await expect(tray.getByRole("button", { name })).toHaveCount(0);
  }
  await expect(viewer.getByRole("button", { name: "Invite" })).toHaveCount(0);

  const paper = paperAt(viewer, 1);
  const pen = await takePen(viewer);
  await pen.draw(await onScreen(paper, across(300)));
  await viewer.keyboard.press("m");
  await pen.draw(await onScreen(paper, across(700)));
  const foot = viewer.getByRole("slider", { name: "Frame of down left" });
  const stood = await foot.boundingBox();
  if (stood === null) throw new Error("the foot is not on screen");
  const from = { x: stood.x + stood.width / 2, y: stood.y + 12 };
  await pen.draw([from, { ...from, x: from.x + 40 }, { ...from, x: from.x + 80 }]);
  await foot.press("ArrowRight");
  await viewer.keyboard.press("Alt+ArrowRight");
  await viewer.keyboard.press("Delete");
  await viewer.keyboard.press("n");
  expect(await framesOf(viewer)).toEqual([1, 4, 7, 10, 13, 16, 19, 22, 25]);
  expect(await inkOn(paper)).toBe(0);

  // What the owner draws after all that is the only thing on the sheet, for both.
  const ownersPen = await takePen(owner);
  await ownersPen.draw(await onScreen(paperAt(owner, 1), across(500)));
  await expect.poll(() => inkOn(paper)).toBeGreaterThan(20);
  await allSaved(owner);
  for (const page of [owner, viewer]) {
    const { file } = await exportSheet(page);
    expect(file.panels.flatMap(({ ink }) => [...ink.side, ...ink.front])).toHaveLength(1);
    expect(file.panels.flatMap(({ marks }) => Object.keys(marks.side))).toEqual([]);
  }
});

test("a stranger without a link is told how to get one", async ({ newcomer }) => {
  const owner = await newcomer();
  await startWalk(owner, board.url, "Closed");
  const stranger = await newcomer({ mayComplain: REFUSAL });
  await stranger.goto(owner.url());
  await expect(
    stranger.getByRole("heading", { name: "This browser has no way into the sheet" }),
  ).toBeVisible();
  await expect(stranger.getByText(/Ask whoever sent you here for one/)).toBeVisible();
  await expect(stranger.getByRole("figure")).toHaveCount(0);
  await stranger.getByRole("link", { name: "To the start page" }).click();
  await expect(stranger.getByRole("heading", { name: "Heelstrip" })).toBeVisible();
});

test("a link that was cut short or revoked says that it opens nothing", async ({ newcomer }) => {
  const owner = await newcomer();
  await startWalk(owner, board.url, "Revoked");
  const address = await makeLink(owner, "draw", "Gus");
  const opensNothing = async (link: string) => {
    const guest = await newcomer({ mayComplain: REFUSAL });
    await guest.goto(link);
    await expect(guest.getByRole("heading", { name: "This link opens nothing" })).toBeVisible();
    // The secret is not left standing in the address.
    expect(new URL(guest.url()).hash).toBe("");
  };
  await opensNothing(address.slice(0, -4));

  await owner.getByRole("button", { name: "Invite" }).click();
  const dialog = owner.getByRole("dialog", { name: "Invite to this sheet" });
  await dialog.getByRole("button", { name: "Revoke the draw link “Gus”" }).click();
  await dialog.getByRole("button", { name: "Revoke it" }).click();
  await expect(dialog.getByRole("button", { name: "Revoke the draw link “Gus”" })).toHaveCount(0);
  await opensNothing(address);
});

test("an address that is no sheet's says so", async ({ newcomer }) => {
  const page = await newcomer({ mayComplain: REFUSAL });
  await page.goto(`${board.url}/sheet/short`);
  await expect(
    page.getByRole("heading", { name: "There is nothing at this address" }),
  ).toBeVisible();
});
