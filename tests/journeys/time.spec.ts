import type { Locator, Page } from "@playwright/test";
import { expect, ownBoard, test } from "../support/journey";
import { tabTo } from "../support/journey-keys";
import { across, labelOf, onScreen, paperAt } from "../support/journey-papers";
import { exportSheet, framesOf, openCaptured, startWalk, titleOf } from "../support/journey-sheet";
import { type ScreenPoint, takePen } from "../support/pen";

const board = ownBoard();

const PLAIN = [1, 4, 7, 10, 13, 16, 19, 22, 25];
const UNEVEN = [1, 6, 7, 10, 13, 17, 19, 22, 25];

const foot = (page: Page, which: string) => page.getByRole("slider", { name: `Frame of ${which}` });

async function middleOf(element: Locator): Promise<ScreenPoint> {
  const box = await element.boundingBox();
  if (box === null) throw new Error("it is not on screen");
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

/** Moves two panels off their even frames, by keys. */
async function unsettle(page: Page): Promise<void> {
  await labelOf(page, 4).click();
  await page.keyboard.press("Alt+ArrowRight");
  await page.keyboard.press("Alt+ArrowRight");
  await labelOf(page, 16).click();
  await page.keyboard.press("Alt+ArrowRight");
  await expect.poll(() => framesOf(page)).toEqual(UNEVEN);
}

test("gaps are evened out: looked at, left, done, and undone as one", async ({ newcomer }) => {
  const page = await newcomer();
  await startWalk(page, board.url, "Evened");
  await unsettle(page);
  const bar = page.getByRole("form", { name: "Even out" });

  await page.keyboard.press("e");
  await expect(bar.getByRole("status")).toHaveText("Moves 6 → 4, 17 → 16.");
  expect(await framesOf(page)).toEqual(UNEVEN); // only looked at
  await page.keyboard.press("Escape");
  await expect(bar).toBeHidden();

  await page.getByRole("button", { name: "Even out" }).click();
  await bar.getByLabel("What").selectOption("right step 13 → 25");
  await expect(bar.getByRole("status")).toHaveText("Moves 17 → 16.");
  await bar.getByRole("button", { name: "Even out" }).click();
  await expect.poll(() => framesOf(page)).toEqual([1, 6, 7, 10, 13, 16, 19, 22, 25]);
  await page.keyboard.press("e");
  await page.keyboard.press("Tab");
  await page.keyboard.press("Enter");
  await expect.poll(() => framesOf(page)).toEqual(PLAIN);
  await page.keyboard.press("Control+z");
  await page.keyboard.press("Control+z");
  await expect.poll(() => framesOf(page)).toEqual(UNEVEN);

  await page.keyboard.press("Control+Shift+z");
  await page.keyboard.press("Control+Shift+z");
  await page.keyboard.press("e");
  await expect(bar.getByRole("status")).toHaveText("It is even: nothing moves.");
  await expect(bar.getByRole("button", { name: "Even out" })).toBeDisabled();
});

test("a walk is retimed by keyboard alone, whole and by a step", async ({ newcomer }) => {
  const page = await newcomer();
  await startWalk(page, board.url, "Another tempo");
  const bar = page.getByRole("form", { name: "Retime" });
  const says = bar.getByRole("status");

  await tabTo(page, page.getByRole("button", { name: "Retime" }));
  await page.keyboard.press("Enter");
  await expect(says).toHaveText("That is how it stands.");
  await tabTo(page, bar.getByLabel("Frames of a left step"));
  await page.keyboard.type("3"); // what stood there is selected
  await expect(says).toHaveText("At least 4: each pose needs a frame of its own.");
  await page.keyboard.press("Control+a");
  await page.keyboard.type("16");
  await tabTo(page, bar.getByLabel("Frames of a right step"));
  await page.keyboard.type("24");
  await expect(says).toHaveText("Contacts 1 · 17 · 41. Loop 1 to 41. Reads elderly or tired.");
  await page.keyboard.press("Enter");
  await expect.poll(() => framesOf(page)).toEqual([1, 5, 9, 13, 17, 23, 29, 35, 41]);
  await expect(page.getByRole("button", { name: "Retime" })).toBeFocused();
  await expect(page.getByText("16 left, 24 right frames a step")).toBeVisible();

  await page.keyboard.press("t");
  await bar.getByLabel("What").selectOption("left step 1 → 17");
  await bar.getByLabel("Frames of this step").fill("8");
  await bar.getByRole("button", { name: "Retime" }).click();
  await expect.poll(() => framesOf(page)).toEqual([1, 3, 5, 7, 9, 15, 21, 27, 33]);
  const { file } = await exportSheet(page);
  expect(file.head).toMatchObject({
    framesPerStep: { left: 8, right: 24 },
    loop: { from: 1, to: 33 },
  });

  await page.keyboard.press("Control+z");
  await page.keyboard.press("Control+z");
  await expect.poll(() => framesOf(page)).toEqual(PLAIN);
});

test("on twos a foot goes from drawn frame to drawn frame, by pen and by keys", async ({
  newcomer,
}) => {
  const page = await newcomer();
  await startWalk(page, board.url, "Every second frame");
  await page.getByRole("button", { name: "on ones" }).click();
  await expect(page.getByRole("button", { name: "on twos" })).toBeVisible();
  expect(await framesOf(page)).toEqual(PLAIN); // what was drawn stays where it is

  const passing = foot(page, "passing left");
  const from = await middleOf(passing);
  const width = ((await middleOf(foot(page, "contact right"))).x - from.x) / 6;
  const pen = await takePen(page);
  await pen.down(from);
  await pen.move([{ x: from.x + 1.2 * width, y: from.y }]);
  await expect(passing).toHaveAttribute("aria-valuenow", "9");
  await pen.up();
  await passing.press("ArrowLeft");
  await expect(passing).toHaveAttribute("aria-valuenow", "7");
  await foot(page, "down left").press("ArrowRight"); // from an even frame to the next drawn one
  await foot(page, "up left").press("ArrowLeft");
  await expect.poll(() => framesOf(page)).toEqual([1, 5, 7, 9, 13, 16, 19, 22, 25]);
});

test("a hold is set by number, seen on the ruler, and kept by play", async ({ newcomer }) => {
  const page = await newcomer();
  await startWalk(page, board.url, "Held");
  const pen = await takePen(page);
  for (const frame of [1, 4]) await pen.draw(await onScreen(paperAt(page, frame), across(500)));
  await labelOf(page, 1).click();
  const hold = page.getByRole("navigation", { name: "Tray" }).getByLabel("Hold");
  await hold.fill("22");
  await hold.press("Enter");
  await expect(foot(page, "contact left").first()).toHaveAttribute(
    "aria-valuetext",
    "frame 1, held for 22 more",
  );
  expect((await exportSheet(page)).file.panels[0]?.hold).toBe(22);

  // Frames 1 to 23 of 24 show the held contact; only the last shows the down that began under it.
  const stage = page.getByRole("region", { name: "The strip at speed" });
  await page.getByRole("button", { name: "Play the strip" }).click();
  await stage.getByRole("button", { name: "¼" }).click();
  const shown = () => stage.locator("footer p").textContent();
  await expect.poll(shown, { intervals: [20] }).toMatch(/^1[0-9]\s*contact$/);
  await expect.poll(shown, { intervals: [20] }).toMatch(/^24\s*down$/);
  await page.keyboard.press("Escape");

  await page.keyboard.press("Control+z");
  await expect(foot(page, "contact left").first()).toHaveAttribute("aria-valuetext", "frame 1");
});

test("the loop's ends are moved by keys and by pen, and play keeps to them", async ({
  newcomer,
}) => {
  const page = await newcomer();
  await startWalk(page, board.url, "One step");
  const begins = page.getByRole("slider", { name: "Loop begins" });
  const ends = page.getByRole("slider", { name: "Loop ends" });
  await expect(begins).toHaveAttribute("aria-valuetext", "frame 1");
  for (let panel = 0; panel < 4; panel += 1) await ends.press("ArrowLeft");
  await expect(ends).toHaveAttribute("aria-valuetext", "frame 13");

  const pen = await takePen(page);
  const from = await middleOf(begins);
  const width =
    (await middleOf(foot(page, "down left"))).x -
    (await middleOf(foot(page, "contact left").first())).x;
  await pen.down(from);
  await pen.move([{ x: from.x + 1.9 * width, y: from.y }]);
  await expect(begins).toHaveAttribute("aria-valuetext", "frame 7");
  await pen.up();
  expect((await exportSheet(page)).file.head.loop).toEqual({ from: 7, to: 13 });

  await page.keyboard.press("Control+z");
  for (let panel = 0; panel < 4; panel += 1) await page.keyboard.press("Control+z");
  await expect(begins).toHaveAttribute("aria-valuetext", "frame 1");
  await expect(ends).toHaveAttribute("aria-valuetext", "frame 25");
});

test("the shot's own numbers stand on the ruler beside the sheet's", async ({ newcomer }) => {
  const page = await newcomer();
  await startWalk(page, board.url, "Numbered on");
  const number = async (first: string) => {
    await titleOf(page).click();
    const dialog = page.getByRole("dialog", { name: "About this sheet" });
    await dialog.getByLabel("Frame 1 in the shot").fill(first);
    await dialog.getByRole("button", { name: "Keep these changes" }).click();
  };
  await number("1001");
  const down = foot(page, "down left");
  await expect(down).toHaveAttribute("aria-valuetext", "frame 4; 1004 in the shot");
  await expect(down).toContainText("1004");
  await down.press("ArrowRight");
  await expect(down).toHaveAttribute("aria-valuetext", "frame 5; 1005 in the shot");
  expect((await exportSheet(page)).file.head.firstFrame).toBe(1001);
  await number("1");
  await expect(down).toHaveAttribute("aria-valuetext", "frame 5");
  expect((await exportSheet(page)).text).not.toContain("firstFrame");
});

test("charts are one stop for Tab, answer to arrows, and read as tables", async ({ newcomer }) => {
  const page = await newcomer();
  await openCaptured(page, board.url);
  const feet = page.getByRole("img", { name: "Footfalls: which foot is down when, and how" });
  await expect(feet).toBeVisible();
  const article = (name: string) => page.getByRole("article", { name });
  const cell = (name: RegExp) => page.getByRole("button", { name });

  // Tab comes from the last foot on the ruler, so its panel is in hand; the arrows go on from there.
  await tabTo(page, cell(/^contact, frame 26: hips at /));
  await page.keyboard.press("Home");
  await expect(article("frame 1, contact, weight on left")).toHaveAttribute("data-in-hand", "true");
  await page.keyboard.press("ArrowRight");
  await expect(cell(/^down, frame 3: hips at /)).toBeFocused();
  await page.keyboard.press("End");
  await expect(cell(/^contact, frame 26: hips at /)).toBeFocused();
  await page.keyboard.press("Home");
  await page.keyboard.press("ArrowRight");

  // From there Tab comes to the next chart's cell of the same panel.
  await tabTo(page, cell(/^left foot, frames 3 to /));
  await page.keyboard.press("ArrowDown");
  await expect(cell(/^right foot, frames 3 to .*: on its toe$/)).toBeFocused();
  await page.keyboard.press("ArrowRight");
  await page.keyboard.press("ArrowRight");
  await expect(cell(/^right foot, frames 8 to 10: in the air$/)).toBeFocused();
  await expect(article("frame 8, passing, weight on left")).toHaveAttribute("data-in-hand", "true");

  await page.getByRole("button", { name: "feet: read as a table" }).click();
  const dialog = page.getByRole("dialog", { name: "Footfalls: which foot is down when, and how" });
  await expect(dialog.getByRole("row", { name: "right 13 16.1 on its heel" })).toBeVisible();
  await page.keyboard.press("Escape");
  await expect(dialog).toBeHidden();
  await page.getByRole("button", { name: "hips: read as a table" }).click();
  await expect(page.getByRole("dialog").getByRole("row", { name: /^26 / })).toBeVisible();
});
