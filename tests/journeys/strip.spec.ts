import type { Locator, Page } from "@playwright/test";
import { expect, ownBoard, test } from "../support/journey";
import { moveFingers } from "../support/journey-fingers";
import { across, inkOn, labelOf, onScreen, paperAt } from "../support/journey-papers";
import { exportSheet, framesOf, startWalk } from "../support/journey-sheet";
import { type ScreenPoint, takePen } from "../support/pen";

const board = ownBoard();

const PLAIN = [1, 4, 7, 10, 13, 16, 19, 22, 25];

async function middleOf(element: Locator): Promise<ScreenPoint> {
  const box = await element.boundingBox();
  if (box === null) throw new Error("it is not on screen");
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

/** CSS pixels a frame on the ruler. */
async function frameWidth(page: Page): Promise<number> {
  const one = await middleOf(page.getByRole("slider", { name: "Frame of down left" }));
  const next = await middleOf(page.getByRole("slider", { name: "Frame of passing left" }));
  return (next.x - one.x) / 3;
}

test("a stem's foot moves by pen, by mouse and by arrow keys", async ({ newcomer }) => {
  const page = await newcomer();
  await startWalk(page, board.url, "Timed");
  const foot = page.getByRole("slider", { name: "Frame of down left" });
  const frames = () => framesOf(page);
  const width = await frameWidth(page);
  const from = await middleOf(foot);
  const along = (by: number) => ({ x: from.x + by * width, y: from.y });

  const pen = await takePen(page);
  await pen.down(from);
  await pen.move([along(0.5), along(1)]);
  await expect(foot).toHaveAttribute("aria-valuetext", "frame 5"); // seen before it is put down
  await pen.up();
  await expect.poll(frames).toEqual([1, 5, 7, 10, 13, 16, 19, 22, 25]);
  await page.keyboard.press("Control+z");
  await expect.poll(frames).toEqual(PLAIN);

  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  await page.mouse.move(along(4).x, from.y, { steps: 5 });
  await page.mouse.up();
  await expect.poll(frames).toEqual([1, 7, 8, 10, 13, 16, 19, 22, 25]);
  // Order is the frame: the panel now hangs behind the passing.
  await expect(page.getByRole("article").nth(2)).toHaveAccessibleName(
    /^frame 8, down, weight on left/,
  );
  await page.keyboard.press("Control+z");

  await foot.press("ArrowRight");
  await foot.press("ArrowRight");
  await expect.poll(frames).toEqual([1, 6, 7, 10, 13, 16, 19, 22, 25]);
  await foot.press("ArrowLeft");
  await expect(foot).toHaveAttribute("aria-valuenow", "5");
  await labelOf(page, 1).click();
  await page.keyboard.press("Alt+ArrowRight");
  await expect.poll(frames).toEqual([2, 5, 7, 10, 13, 16, 19, 22, 25]);
});

test("panels are added, relabelled, moved by number and removed, and each is undone", async ({
  newcomer,
}) => {
  const page = await newcomer();
  await startWalk(page, board.url, "Edited");
  const tray = page.getByRole("navigation", { name: "Tray" });
  const panel = (name: string) => page.getByRole("article", { name });

  await labelOf(page, 4).click();
  await tray.getByRole("button", { name: "Add one after" }).click();
  await expect(panel("frame 5, breakdown, weight on left")).toBeVisible();
  await tray.getByLabel("Pose").selectOption("up");
  await tray.getByLabel("Weight").selectOption("right");
  await expect(panel("frame 5, up, weight on right")).toBeVisible();
  await tray.getByLabel("Frame", { exact: true }).fill("6");
  await tray.getByLabel("Frame", { exact: true }).press("Enter");
  await expect(panel("frame 6, up, weight on right")).toBeVisible();
  expect(await framesOf(page)).toEqual([1, 4, 6, 7, 10, 13, 16, 19, 22, 25]);

  await labelOf(page, 7).click();
  await tray.getByRole("button", { name: "Remove it" }).click();
  await expect.poll(() => framesOf(page)).toEqual([1, 4, 6, 10, 13, 16, 19, 22, 25]);
  const undo = tray.getByRole("button", { name: "Undo" });
  await undo.click();
  await expect(panel("frame 7, passing, weight on left")).toBeVisible();
  await undo.click();
  await expect(panel("frame 5, up, weight on right")).toBeVisible();
  for (let step = 0; step < 3; step += 1) await undo.click();
  await expect.poll(() => framesOf(page)).toEqual(PLAIN);
  await expect(undo).toBeDisabled();
});

const zoomShown = (page: Page) => page.getByRole("button", { name: "Whole strip" });

test("a wheel with Ctrl zooms around the pointer", async ({ newcomer }) => {
  const page = await newcomer();
  await startWalk(page, board.url, "Looked at closely");
  const paper = paperAt(page, 13);
  const spot = { x: 360, y: 500 };
  const [under] = await onScreen(paper, [spot]);
  if (under === undefined) throw new Error("the paper is not on screen");
  await expect(zoomShown(page)).toHaveText("100 %");
  await page.mouse.move(under.x, under.y);
  await page.keyboard.down("Control");
  await page.mouse.wheel(0, -300);
  await page.keyboard.up("Control");
  await expect(zoomShown(page)).not.toHaveText("100 %");
  // e^(300 × 0.0022): three notches of a wheel nearly double it.
  await expect(zoomShown(page)).toHaveText("193 %");
  const [now] = await onScreen(paper, [spot]);
  expect(Math.abs((now?.x ?? 0) - under.x)).toBeLessThan(60);
  await page.keyboard.press("0");
  await expect(zoomShown(page)).toHaveText("100 %");
});

test("two fingers zoom and do not draw; one finger draws", async ({ newcomer }) => {
  const page = await newcomer({ hasTouch: true });
  await startWalk(page, board.url, "By hand");
  const paper = paperAt(page, 13);
  const middle = await middleOf(paper);
  const apart = (way: 1 | -1) =>
    Array.from({ length: 12 }, (_, n) => ({ x: middle.x + way * (15 + 6 * n), y: middle.y }));
  await moveFingers(page, [apart(-1), apart(1)]);
  await expect
    .poll(async () => Number.parseInt((await zoomShown(page).textContent()) ?? "", 10))
    .toBeGreaterThan(200);
  const strokes = async () => {
    const { file } = await exportSheet(page);
    return file.panels.flatMap(({ ink }) => [...ink.side, ...ink.front]);
  };
  expect(await strokes()).toEqual([]);

  await zoomShown(page).click();
  await expect(zoomShown(page)).toHaveText("100 %");
  await moveFingers(page, [await onScreen(paper, across(500))]);
  await expect.poll(() => inkOn(paper)).toBeGreaterThan(20);
  expect(await strokes()).toHaveLength(1);
});

test("Enter draws a panel large, arrows flip to its neighbours, Escape goes back", async ({
  newcomer,
}) => {
  const page = await newcomer();
  await startWalk(page, board.url, "Drawn large");
  const small = (await paperAt(page, 7).boundingBox())?.width ?? 0;
  await labelOf(page, 7).click();
  await page.keyboard.press("Enter");
  const desk = page.getByRole("region", { name: "Drawing desk" });
  await expect(desk.getByRole("figure", { name: "passing, frame 7, side view" })).toBeVisible();
  expect((await paperAt(page, 7).boundingBox())?.width).toBeGreaterThan(3 * small);

  const pen = await takePen(page);
  await pen.draw(await onScreen(paperAt(page, 7), across(400)));
  await expect.poll(() => inkOn(paperAt(page, 7))).toBeGreaterThan(200);
  await page.keyboard.press("ArrowRight");
  await expect(desk.getByRole("figure", { name: "up, frame 10, side view" })).toBeVisible();
  expect(await inkOn(paperAt(page, 10))).toBe(0); // what shines through is the neighbour's
  await page.keyboard.press("ArrowLeft");
  await page.keyboard.press("ArrowLeft");
  await expect(desk.getByRole("figure", { name: "down, frame 4, side view" })).toBeVisible();
  await page.keyboard.press("Escape");
  await expect(desk).toBeHidden();
  await expect(page.getByRole("article")).toHaveCount(9);
  await expect.poll(() => inkOn(paperAt(page, 7))).toBeGreaterThan(20);
});
