import type { Page } from "@playwright/test";
import type { JointName, PoseMarks } from "../../lib/body";
import type { View } from "../../lib/geometry";
import { expect, ownBoard, test } from "../support/journey";
import { expectAccessible } from "../support/journey-axe";
import { tapsFor } from "../support/journey-figure";
import { moveFingers } from "../support/journey-fingers";
import { expectFocusSeen } from "../support/journey-keys";
import { across, labelOf, onScreen, paperAt } from "../support/journey-papers";
import { allSaved, exportSheet, startWalk } from "../support/journey-sheet";
import { type ScreenPoint, takePen } from "../support/pen";

const board = ownBoard();

const asked = (page: Page, view: View = "side") =>
  page.getByRole("region", { name: `Joints, ${view}` }).getByRole("status");

async function panelAt(page: Page, frame: number) {
  const { file } = await exportSheet(page);
  const panel = file.panels.find((one) => one.frame === frame);
  if (panel === undefined) throw new Error(`no panel at frame ${frame}`);
  return panel;
}

type Marks = Readonly<Partial<Record<JointName, readonly number[]>>>;
const marksAt = async (page: Page, frame: number) =>
  (await panelAt(page, frame)).marks as unknown as Record<keyof PoseMarks, Marks>;

async function middleOf(page: Page, frame: number, part: string): Promise<ScreenPoint> {
  const box = await paperAt(page, frame).locator(part).boundingBox();
  if (box === null) throw new Error(`no ${part} on frame ${frame}`);
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

/** The left contact: its heel is tapped a little above the ground, within what a tap means it by. */
const CONTACT = { hipY: 650, left: { x: 510, lift: 5 }, right: { x: 200, lift: 60 } };
const QUICK = 8;

test("the prompt goes through the strip by pen, and back with undo", async ({ newcomer }) => {
  test.slow();
  const page = await newcomer();
  await startWalk(page, board.url, "Tapped through");
  const pen = await takePen(page);
  await labelOf(page, 1).click();
  await page.keyboard.press("m");
  await expect(asked(page)).toHaveText("◆ Next: right hip.");
  for (const tap of await onScreen(paperAt(page, 1), tapsFor(CONTACT).slice(0, QUICK))) {
    await pen.tap(tap);
  }
  await expect(asked(page)).toHaveText("On to frame 4, side. ◆ Next: right hip.");
  await expectAccessible(page, "a joint asked for on the paper");

  await pen.tap(await middleOf(page, 4, "[data-guess=right-hip]"));
  await expect(asked(page)).toHaveText("● Next: left hip.");
  await page.keyboard.press("Enter");
  await expect(asked(page)).toHaveText("◆ Next: right knee.");
  await page.keyboard.press("a");
  await expect(asked(page)).toHaveText("On to frame 7, side. ◆ Next: right hip.");
  const marked = await marksAt(page, 4);
  expect(Object.keys(marked.side)).toHaveLength(QUICK);
  const contact = await marksAt(page, 1);
  expect(contact.side["left-heel"]?.[1]).toBe(1080); // it lands there: it stands on the ground
  expect(contact.side["right-heel"]?.[1]).toBeLessThan(1060); // it is in the air

  await page.keyboard.press("Control+z"); // all that were taken at once
  await expect(asked(page)).toHaveText("◆ Next: right knee.");
  await expect(paperAt(page, 4).locator("[data-guess=right-knee]")).toBeVisible();
  await page.keyboard.press("Control+z"); // and one
  await expect(asked(page)).toHaveText("● Next: left hip.");
  expect(Object.keys((await marksAt(page, 4)).side)).toEqual(["right-hip"]);
  await allSaved(page);
});

test("keys alone bring a guess to its place and go on", async ({ newcomer }) => {
  const page = await newcomer();
  await startWalk(page, board.url, "By keys");
  await page.keyboard.press("ArrowRight"); // the first panel in hand
  await page.keyboard.press("m");
  await page.keyboard.press("m"); // to the guess
  const guess = (joint: string) => page.getByRole("button", { name: `Guess: ${joint}, side view` });
  await expect(guess("right hip")).toBeFocused();
  await expectFocusSeen(page);
  const name = (await guess("right hip").getAttribute("aria-label")) ?? "";
  const from = Number(/(\d+) across/.exec(name)?.[1]);
  for (const key of ["ArrowRight", "ArrowRight", "Shift+ArrowRight"])
    await page.keyboard.press(key);
  await page.keyboard.press("Enter");
  await expect(guess("left hip")).toBeFocused();
  for (let joint = 1; joint < QUICK; joint += 1) await page.keyboard.press("Enter");
  await expect(asked(page)).toHaveText("On to frame 4, side. ◆ Next: right hip.");
  await expect(paperAt(page, 4).locator("[data-guess=right-hip]")).toBeFocused();
  const { side } = await marksAt(page, 1);
  expect(Object.keys(side)).toHaveLength(QUICK);
  expect(Math.round(side["right-hip"]?.[0] ?? 0)).toBe(from + 12);
  await allSaved(page);
});

test("a finger takes guesses on the paper and in the tray of a phone", async ({ newcomer }) => {
  const page = await newcomer({ hasTouch: true, viewport: { width: 390, height: 844 } });
  await startWalk(page, board.url, "By finger");
  await labelOf(page, 1).click();
  await page.getByRole("button", { name: "Draw it large" }).click();
  await page.getByRole("button", { name: "Mark joints" }).click();
  const point = await middleOf(page, 1, "[data-guess=right-hip]");
  await moveFingers(page, [[point]]);
  await expect(asked(page)).toHaveText("● Next: left hip.");
  const place = page.getByRole("button", { name: "Place left hip" });
  expect((await place.boundingBox())?.height).toBeGreaterThanOrEqual(44);
  await place.tap();
  await page.getByRole("button", { name: "All 6 as guessed" }).tap();
  await expect(asked(page)).toHaveText("On to frame 4, side. ◆ Next: right hip.");
  await allSaved(page);
});

test("a figure is placed and pulled: the foot stays, the knee bends, the front view follows", async ({
  newcomer,
}) => {
  test.slow();
  const page = await newcomer();
  await startWalk(page, board.url, "Pulled");
  const pen = await takePen(page);
  const PASSING = 7;
  await pen.draw(await onScreen(paperAt(page, PASSING), across(500)));
  await labelOf(page, PASSING).press("Enter"); // to the drawing desk
  await page.keyboard.press("f");
  const before = await marksAt(page, PASSING);
  expect(Object.keys(before.side).length).toBe(Object.keys(before.front).length);
  await expect(paperAt(page, PASSING).locator("[data-pin=left]")).toBeVisible();
  await expect(paperAt(page, PASSING).locator("[data-pin=right]")).toHaveCount(0);
  await expectAccessible(page, "a figure to pull");

  const pullHip = async () => {
    const hip = await middleOf(page, PASSING, "[data-joint=left-hip]");
    const to = [1, 2, 3].map((step) => ({ x: hip.x, y: hip.y + 6 * step }));
    const frontHip = paperAt(page, PASSING, "front").locator("[data-sign=left-hip]");
    const shown = await frontHip.getAttribute("transform");
    await pen.down(hip);
    await pen.move(to);
    await expect(frontHip).not.toHaveAttribute("transform", shown ?? ""); // while it is pulled
    await pen.up();
  };
  await pullHip();
  const pulled = await marksAt(page, PASSING);
  for (const part of ["ankle", "heel", "ball", "toe"] as const) {
    expect(pulled.side[`left-${part}`]).toEqual(before.side[`left-${part}`]);
  }
  const sank = (view: View, joint: JointName) =>
    (pulled[view][joint]?.[1] ?? Number.NaN) - (before[view][joint]?.[1] ?? Number.NaN);
  expect(sank("side", "left-hip")).toBeGreaterThan(20);
  expect(sank("side", "right-hip")).toBeCloseTo(sank("side", "left-hip"), 0);
  expect(sank("front", "left-hip")).toBeCloseTo(sank("side", "left-hip"), 0);
  expect(pulled.side["left-knee"]?.[0]).toBeGreaterThan((before.side["left-knee"]?.[0] ?? 0) + 10);
  // It was fitted to the ink: nothing is to redraw, until it is pulled again another time.
  expect((await panelAt(page, PASSING)).toRedraw).toBeUndefined();

  await page.keyboard.press("Control+z");
  expect(await marksAt(page, PASSING)).toEqual(before);
  await page.keyboard.press("Escape"); // away from the mark, the arrows flip
  await page.keyboard.press("ArrowRight");
  await page.keyboard.press("ArrowLeft");
  await pullHip();
  expect((await panelAt(page, PASSING)).toRedraw).toEqual({ side: true, front: false });

  await page.keyboard.press("f"); // there are marks now: it is shown first
  const form = page.getByRole("group", { name: "Place a figure" });
  await expect(paperAt(page, PASSING).locator("svg[data-ghost]")).toBeVisible();
  const left = await marksAt(page, PASSING);
  await form.getByRole("button", { name: "Leave it" }).click();
  expect(await marksAt(page, PASSING)).toEqual(left);
  await allSaved(page);
});

test("a mark alone or the whole figure is dragged, as chosen, and Alt swaps the two", async ({
  newcomer,
}) => {
  const page = await newcomer();
  await startWalk(page, board.url, "Alone or whole");
  const pen = await takePen(page);
  const FRAME = 7;
  await labelOf(page, FRAME).press("Enter");
  await page.keyboard.press("f");
  const ways = page.getByRole("group", { name: "A drag moves" });
  await expect(ways.getByRole("radio", { name: "the figure" })).toBeChecked();
  const dragWrist = async (alt: boolean) => {
    const wrist = await middleOf(page, FRAME, "[data-joint=right-wrist]");
    pen.holdAlt(alt);
    await pen.draw([wrist, ...[1, 2, 3].map((n) => ({ x: wrist.x + 8 * n, y: wrist.y - 8 * n }))]);
    pen.holdAlt(false);
  };
  const first = await marksAt(page, FRAME);
  await dragWrist(true);
  const alone = await marksAt(page, FRAME);
  expect(alone.side["right-wrist"]).not.toEqual(first.side["right-wrist"]);
  expect(alone.side["right-elbow"]).toEqual(first.side["right-elbow"]);
  expect(alone.front).toEqual(first.front);
  await page.keyboard.press("Control+z");
  await dragWrist(false);
  const whole = await marksAt(page, FRAME);
  expect(whole.side["right-elbow"]).not.toEqual(first.side["right-elbow"]);
  expect(whole.front["right-wrist"]).not.toEqual(first.front["right-wrist"]);
  await page.keyboard.press("Control+z");

  // The arrows do as a drag does.
  await page.getByRole("button", { name: /^left hip, side view/ }).focus();
  await page.keyboard.press("Shift+ArrowDown");
  const lowered = await marksAt(page, FRAME);
  expect(lowered.side["right-hip"]).not.toEqual(first.side["right-hip"]);
  expect(lowered.side["left-heel"]).toEqual(first.side["left-heel"]);
  await page.keyboard.press("Control+z");
  expect(await marksAt(page, FRAME)).toEqual(first);
  await allSaved(page);
});
