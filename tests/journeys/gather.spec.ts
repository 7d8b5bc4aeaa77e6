import type { Locator, Page } from "@playwright/test";
import { expect, ownBoard, test } from "../support/journey";
import { expectAccessible } from "../support/journey-axe";
import { moveFingers } from "../support/journey-fingers";
import { tabTo } from "../support/journey-keys";
import {
  across,
  inkOn,
  labelOf,
  onScreen,
  type PaperPoint,
  paperAt,
} from "../support/journey-papers";
import { allSaved, exportSheet, startWalk } from "../support/journey-sheet";
import { type ScreenPoint, takePen } from "../support/pen";

const board = ownBoard();

const gathered = (page: Page) => page.getByRole("region", { name: "Gathered" });
const bench = (paper: Locator) => paper.getByRole("group");

/** A way round a part of a view, closed. */
function round(top: number, bottom: number): PaperPoint[] {
  const corners = [
    { x: 60, y: top },
    { x: 660, y: top },
    { x: 660, y: bottom },
    { x: 60, y: bottom },
    { x: 60, y: top + 5 },
  ];
  return corners.flatMap((to, n) => {
    const from = corners[n - 1] ?? to;
    return [0.25, 0.5, 0.75, 1].map((share) => ({
      x: from.x + (to.x - from.x) * share,
      y: from.y + (to.y - from.y) * share,
    }));
  });
}

/** The strokes of the side view at a frame, as the sheet's file has them. */
async function strokesAt(page: Page, frame: number) {
  const { file } = await exportSheet(page);
  return file.panels.find((panel) => panel.frame === frame)?.ink.side ?? [];
}

/** Two lines on frame 1, at the drawing desk, and the gather tool in the hand. */
async function drawTwoLines(page: Page, title: string, draw: (way: ScreenPoint[]) => unknown) {
  await startWalk(page, board.url, title);
  await labelOf(page, 1).press("Enter");
  const paper = paperAt(page, 1);
  await draw(await onScreen(paper, across(300)));
  await draw(await onScreen(paper, across(800)));
  await page.keyboard.press("g");
  return paper;
}

async function twoLines(page: Page, title: string) {
  const pen = await takePen(page);
  return { paper: await drawTwoLines(page, title, (way) => pen.draw(way)), pen };
}

test("strokes are gathered with a lasso, moved, scaled, recoloured and rubbed out", async ({
  newcomer,
}) => {
  test.slow();
  const page = await newcomer();
  const { paper, pen } = await twoLines(page, "Gathering");
  const [upper, lower] = await strokesAt(page, 1);
  await expectAccessible(page, "the gather tool in the hand");

  await pen.draw(await onScreen(paper, round(200, 420)));
  await expect(gathered(page).getByRole("status")).toHaveText("1 stroke gathered");
  await expectAccessible(page, "a stroke gathered");

  await test.step("the pen moves it", async () => {
    const way = [
      { x: 360, y: 300 },
      { x: 360, y: 350 },
      { x: 360, y: 400 },
    ];
    await pen.draw(await onScreen(paper, way));
    const [moved, stayed] = await strokesAt(page, 1);
    expect(stayed).toEqual(lower);
    expect(moved?.id).toBe(upper?.id);
    expect((moved?.points[0]?.[1] ?? 0) - (upper?.points[0]?.[1] ?? 0)).toBeCloseTo(100, -0.5);
  });

  await test.step("keys nudge it, and each is a step of undo", async () => {
    const [before] = await strokesAt(page, 1);
    await bench(paper).focus();
    await page.keyboard.press("ArrowRight");
    await page.keyboard.press("Shift+ArrowDown");
    const [nudged] = await strokesAt(page, 1);
    const x = (stroke: typeof nudged) => stroke?.points[0]?.[0] ?? 0;
    const y = (stroke: typeof nudged) => stroke?.points[0]?.[1] ?? 0;
    expect(x(nudged)).toBeGreaterThan(x(before));
    expect(y(nudged) - y(before)).toBeCloseTo(10 * (x(nudged) - x(before)), 0);
    await page.keyboard.press("Control+z");
    await page.keyboard.press("Control+z");
    expect((await strokesAt(page, 1))[0]).toEqual(before);
  });

  await test.step("a handle scales it, and the tray turns and recolours it", async () => {
    const [before] = await strokesAt(page, 1);
    const ys = before?.points.map(([, y]) => y) ?? [];
    const half = (before?.width ?? 0) / 2;
    const corner = { x: 600 + half, y: Math.max(...ys) + half };
    await pen.draw(
      await onScreen(paper, [corner, { x: 660, y: corner.y + 5 }, { x: 690, y: corner.y + 8 }]),
    );
    const [scaled] = await strokesAt(page, 1);
    const breadth = (stroke: typeof scaled) =>
      (stroke?.points.at(-1)?.[0] ?? 0) - (stroke?.points[0]?.[0] ?? 0);
    expect(breadth(scaled)).toBeGreaterThan(1.1 * breadth(before));
    expect(scaled?.width).toBeGreaterThan(before?.width ?? 0);
    await gathered(page).getByRole("button", { name: "Turn right" }).click();
    await gathered(page).getByRole("button", { name: "Blue" }).click();
    const [turned] = await strokesAt(page, 1);
    expect(turned?.colour).toBe("blue");
    expect((turned?.points.at(-1)?.[1] ?? 0) - (turned?.points[0]?.[1] ?? 0)).not.toBeCloseTo(
      (scaled?.points.at(-1)?.[1] ?? 0) - (scaled?.points[0]?.[1] ?? 0),
      0,
    );
  });

  await test.step("Delete rubs it out, not the panel", async () => {
    await bench(paper).focus();
    await page.keyboard.press("Delete");
    expect((await strokesAt(page, 1)).map(({ id }) => id)).toEqual([lower?.id]);
    await expect(paper).toBeVisible();
    await page.keyboard.press("Control+z");
    expect((await strokesAt(page, 1)).length).toBe(2);
  });
  await allSaved(page);
});

test("gathered strokes are dragged over to another panel, or taken there by the tray", async ({
  newcomer,
}) => {
  test.slow();
  const page = await newcomer();
  const { pen } = await twoLines(page, "Taking along");
  await page.keyboard.press("Escape"); // to the strip
  await gathered(page).getByRole("button", { name: "Box" }).click();
  const from = paperAt(page, 1);
  const [start, end] = await onScreen(from, [
    { x: 40, y: 150 },
    { x: 700, y: 1000 },
  ]);
  if (start === undefined || end === undefined) throw new Error("two corners");
  await pen.draw([start, { x: (start.x + end.x) / 2, y: (start.y + end.y) / 2 }, end]);
  await expect(gathered(page).getByRole("status")).toHaveText("2 strokes gathered");
  const [grip] = await onScreen(from, [{ x: 360, y: 550 }]);
  const [there] = await onScreen(paperAt(page, 7), [{ x: 360, y: 550 }]);
  if (grip === undefined || there === undefined) throw new Error("two points");
  await pen.draw([grip, { x: (grip.x + there.x) / 2, y: grip.y }, there]);
  await expect.poll(() => inkOn(paperAt(page, 7))).toBeGreaterThan(50);
  expect(await inkOn(from)).toBe(0);
  expect((await strokesAt(page, 7)).length).toBe(2);

  await gathered(page).getByRole("combobox", { name: /^To/ }).selectOption("7 passing, front");
  await gathered(page).getByRole("button", { name: "Take there" }).click();
  await expect.poll(() => inkOn(paperAt(page, 7, "front"))).toBeGreaterThan(50);
  expect(await inkOn(paperAt(page, 7))).toBe(0);
  await page.keyboard.press("Control+z");
  await page.keyboard.press("Control+z");
  await expect.poll(() => inkOn(from)).toBeGreaterThan(50);
  await allSaved(page);
});

test("the keyboard alone gathers, shapes and lets go", async ({ newcomer }) => {
  const page = await newcomer();
  const { paper } = await twoLines(page, "Gathering by keys");
  const before = await strokesAt(page, 1);
  const all = gathered(page).getByRole("button", { name: "Gather all of this view" });
  await tabTo(page, all);
  await page.keyboard.press("Enter");
  await expect(gathered(page).getByRole("status")).toHaveText("2 strokes gathered");
  await expect(bench(paper)).toBeFocused();
  for (const key of ["ArrowLeft", "+", "."]) await page.keyboard.press(key);
  const now = await strokesAt(page, 1);
  expect(now.map(({ id }) => id)).toEqual(before.map(({ id }) => id));
  for (const [n, stroke] of now.entries()) {
    expect(stroke.width).toBeGreaterThan(before[n]?.width ?? 0);
  }
  await page.keyboard.press("Escape");
  await expect(all).toBeVisible();

  await tabTo(page, all, "Shift+Tab");
  await page.keyboard.press("Enter");
  const to = gathered(page).getByRole("combobox", { name: /^To/ });
  await tabTo(page, to, "Shift+Tab");
  await to.selectOption("4 down, side");
  await tabTo(page, gathered(page).getByRole("button", { name: "Take there" }));
  await page.keyboard.press("Enter");
  await expect(bench(paperAt(page, 4))).toBeFocused();
  await page.keyboard.press("ArrowUp");
  expect((await strokesAt(page, 4)).map(({ id }) => id)).toEqual(before.map(({ id }) => id));
  expect(await strokesAt(page, 1)).toEqual([]);

  await tabTo(page, gathered(page).getByRole("button", { name: "Let go" }), "Shift+Tab");
  await page.keyboard.press("Enter");
  await expect(gathered(page)).toBeFocused();
  await page.keyboard.press("l");
  const box = gathered(page).getByRole("button", { name: "Box" });
  await expect(box).toHaveAttribute("aria-pressed", "true");
});

test("a pen without a keyboard adds to what is gathered, and lets one go", async ({ newcomer }) => {
  const page = await newcomer();
  const { paper, pen } = await twoLines(page, "Adding");
  const told = gathered(page).getByRole("status");
  const tapOn = async (y: number) => {
    const [at] = await onScreen(paper, [{ x: 360, y }]);
    if (at !== undefined) await pen.tap(at);
  };
  const [line] = await strokesAt(page, 1);
  const y = line?.points.find(([x]) => x >= 355)?.[1] ?? 0;
  await tapOn(y);
  await expect(told).toHaveText("1 stroke gathered");
  await gathered(page).getByRole("button", { name: "Add" }).click();
  await pen.draw(await onScreen(paper, round(700, 920)));
  await expect(told).toHaveText("2 strokes gathered");
  await tapOn(y);
  await expect(told).toHaveText("1 stroke gathered");
  await gathered(page).getByRole("button", { name: "Let go" }).click();
  await expect(told).toHaveText("Draw round strokes, or tap one.");
});

test("the rubber takes only what it touches, and undo makes the line whole", async ({
  newcomer,
}) => {
  const page = await newcomer();
  const { paper, pen } = await twoLines(page, "Rubbing in part");
  await page.keyboard.press("r");
  await page.getByRole("button", { name: "only where it touches" }).click();
  const [whole] = await strokesAt(page, 1);
  const way = [200, 250, 300, 350, 400].map((y) => ({ x: 360, y }));
  await pen.draw(await onScreen(paper, way));
  const strokes = await strokesAt(page, 1);
  expect(strokes.length).toBe(3);
  const upper = strokes.filter(({ points }) => points.every(([, y]) => y < 500));
  for (const { points } of upper) {
    const clear = points.every(([x]) => x < 350) || points.every(([x]) => x > 370);
    expect(clear).toBe(true);
  }
  await page.keyboard.press("Control+z");
  const again = await strokesAt(page, 1);
  expect(again.length).toBe(2);
  expect(again.find(({ id }) => id === whole?.id)).toEqual(whole);
});

test("a finger gathers on a telephone, and two fingers do not", async ({ newcomer }) => {
  const page = await newcomer({ viewport: { width: 390, height: 844 }, hasTouch: true });
  const paper = await drawTwoLines(page, "Gathering by touch", (way) => moveFingers(page, [way]));
  await moveFingers(page, [await onScreen(paper, round(200, 420))]);
  await expect(gathered(page).getByRole("status")).toHaveText("1 stroke gathered");
  await expectAccessible(page, "a stroke gathered on a telephone");
  const before = await strokesAt(page, 1);
  // Two fingers on what is gathered move the paper, not the stroke.
  const way = await onScreen(paper, [
    { x: 360, y: 300 },
    { x: 360, y: 500 },
  ]);
  await moveFingers(page, [way, way.map(({ x, y }) => ({ x: x + 60, y: y + 90 }))]);
  await expect(gathered(page).getByRole("status")).toHaveText("1 stroke gathered");
  expect(await strokesAt(page, 1)).toEqual(before);
});
