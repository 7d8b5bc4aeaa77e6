import type { Locator, Page } from "@playwright/test";
import type { JointName, Mark } from "../../lib/body";
import type { View } from "../../lib/geometry";
import { expect, ownBoard, test } from "../support/journey";
import { expectAccessible } from "../support/journey-axe";
import { tabTo } from "../support/journey-keys";
import { across, inkOn, labelOf, onScreen, paperAt } from "../support/journey-papers";
import { allSaved, exportSheet, framesOf, openCaptured, startWalk } from "../support/journey-sheet";
import { takePen } from "../support/pen";

const board = ownBoard();

const passOn = (page: Page) => page.getByRole("region", { name: "Pass on" });
const ghostOn = (paper: Locator) => paper.locator("svg[data-ghost]");

/** Asks for something to be passed on to the panel at a frame, by the tray. */
async function ask(page: Page, frame: number, deed: string): Promise<Locator> {
  await labelOf(page, frame).click();
  const fold = passOn(page).getByRole("button", { name: "Pass on" });
  if ((await fold.getAttribute("aria-expanded")) === "false") await fold.click();
  await passOn(page).getByRole("button", { name: deed }).click();
  return passOn(page).getByRole("group", { name: deed });
}

/** The marks of one view of the panel at a frame, as the sheet's file has them. */
async function marksAt(page: Page, frame: number, view: View = "side") {
  const { file } = await exportSheet(page);
  const panel = file.panels.find((one) => one.frame === frame);
  if (panel === undefined) throw new Error(`no panel at frame ${frame}`);
  return panel.marks[view] as Partial<Record<JointName, Mark | readonly number[]>>;
}

test("a pose is mirrored to the other step, seen before it is done, and taken back", async ({
  newcomer,
}) => {
  test.slow();
  const page = await newcomer();
  await openCaptured(page, board.url);
  const frames = await framesOf(page);
  const [first = 0] = frames;
  const other = frames[4] ?? 0; // the right step's contact
  const given = await marksAt(page, first);
  const before = await marksAt(page, other);

  const form = await ask(page, other, "Mirror to the other step");
  await expect(form.getByLabel("From")).toContainText(`${first} contact left`);
  await expect(form.getByRole("status")).toHaveText(`Shown dashed on frame ${other}.`);
  for (const view of ["side", "front"] as const) {
    await expect(ghostOn(paperAt(page, other, view))).toBeVisible();
    await expect(ghostOn(paperAt(page, first, view))).toHaveCount(0);
  }
  await expectAccessible(page, "a pose about to be mirrored");
  expect(await marksAt(page, other)).toEqual(before);

  await form.getByRole("button", { name: "Do it" }).click();
  await expect(passOn(page).getByRole("status")).toHaveText("Pose mirrored. Undo takes it back.");
  await expect(ghostOn(paperAt(page, other))).toHaveCount(0);
  const now = await marksAt(page, other);
  expect(now["right-toe"]).toEqual(given["left-toe"]);
  expect(now["left-knee"]).toEqual(given["right-knee"]);
  await page.keyboard.press("Control+z");
  expect(await marksAt(page, other)).toEqual(before);
  await allSaved(page);
});

test("a pose and its ink are copied with keys alone, or left", async ({ newcomer }) => {
  const page = await newcomer();
  await startWalk(page, board.url, "Passing on by keys");
  const pen = await takePen(page);
  await pen.draw(await onScreen(paperAt(page, 1), across(500)));
  await expect.poll(() => inkOn(paperAt(page, 1))).toBeGreaterThan(50);

  await tabTo(page, labelOf(page, 4));
  await page.keyboard.press("Space");
  await page.keyboard.press("c");
  const form = passOn(page).getByRole("group", { name: "Copy the pose" });
  // Nothing is marked on frame 1, so without its ink there is nothing to copy.
  await expect(form.getByRole("status")).toHaveText("Needs marks to copy.");
  await expect(form.getByRole("button", { name: "Do it" })).toBeDisabled();
  await tabTo(page, form.getByLabel("with its ink"), "Shift+Tab");
  await page.keyboard.press("Space");
  await expect(ghostOn(paperAt(page, 4))).toBeVisible();
  await page.keyboard.press("Escape");
  await expect(form).toHaveCount(0);
  expect(await inkOn(paperAt(page, 4))).toBe(0);

  await page.keyboard.press("c");
  await tabTo(page, form.getByLabel("with its ink"), "Shift+Tab");
  await page.keyboard.press("Space");
  await page.keyboard.press("Enter");
  await expect(passOn(page).getByRole("status")).toHaveText("Pose copied. Undo takes it back.");
  await expect.poll(() => inkOn(paperAt(page, 4))).toBeGreaterThan(50);
  await allSaved(page);
});

test("a foot goes to its footprint, and the body down with the feet kept", async ({ newcomer }) => {
  test.slow();
  const page = await newcomer();
  await openCaptured(page, board.url);
  const frames = await framesOf(page);
  const passing = frames[2] ?? 0;
  const before = await marksAt(page, passing);

  const foot = await ask(page, passing, "Foot to its footprint");
  await expect(foot.getByLabel("Foot")).toHaveValue("left");
  await page.keyboard.press("Enter");
  await expect(passOn(page).getByRole("status")).toHaveText(/^Foot put on its footprint/);
  const planted = await marksAt(page, passing);
  expect(planted["left-ball"]).not.toEqual(before["left-ball"]);
  expect(planted["left-hip"]).toEqual(before["left-hip"]);
  expect(planted["right-ball"]).toEqual(before["right-ball"]);

  const body = await ask(page, passing, "Raise or lower the body");
  await expect(body.getByRole("status")).toHaveText("Cannot: it is not moved yet.");
  const height = body.getByRole("slider", { name: /Height/ });
  await expect(height).toBeFocused();
  for (let step = 0; step < 40; step += 1) await page.keyboard.press("ArrowRight");
  await expect(body.getByRole("status")).toContainText("% of a leg longer");
  await expect(body.getByRole("button", { name: "Do it" })).toBeDisabled();
  for (let step = 0; step < 48; step += 1) await page.keyboard.press("ArrowLeft");
  await expect(body.getByRole("status")).toHaveText(`Shown dashed on frame ${passing}.`);
  await page.keyboard.press("Enter");
  await expect(passOn(page).getByRole("status")).toHaveText(/^Body shifted/);
  const lowered = await marksAt(page, passing);
  expect(lowered["left-hip"]).not.toEqual(planted["left-hip"]);
  for (const joint of ["left-heel", "left-toe", "right-ankle", "right-toe"] as const) {
    expect(lowered[joint]).toEqual(planted[joint]);
  }
  await allSaved(page);
});

test("without a panel in hand nothing is passed on, and the tray says why", async ({
  newcomer,
}) => {
  const page = await newcomer();
  await openCaptured(page, board.url);
  await page.keyboard.press("c"); // no panel is in hand
  await expect(passOn(page).getByRole("group")).toHaveCount(0);
  const fold = passOn(page).getByRole("button", { name: "Pass on" });
  await fold.click();
  await expect(passOn(page).getByRole("button", { name: "Copy a foot" })).toBeDisabled();
  await expect(passOn(page).getByRole("status")).toHaveText("Tap the panel that shall have it.");
});
