import { reviewWalk } from "../../lib/gait";
import { expect, ownBoard, test } from "../support/journey";
import { expectAccessible } from "../support/journey-axe";
import { cardOf, drawnFile, FAULTY, fixBar, margin, sheetFrom } from "../support/journey-fixes";
import { tabTo } from "../support/journey-keys";
import { across, onScreen, paperAt } from "../support/journey-papers";
import {
  allSaved,
  exportSheet,
  framesOf,
  makeLink,
  nameOneself,
  openBrindle,
  settled,
} from "../support/journey-sheet";
import { takePen } from "../support/pen";

const board = ownBoard();

test("a fix is seen before it is done, by pen, and the panel is to redraw until one draws there", async ({
  newcomer,
}) => {
  test.slow();
  const page = await newcomer();
  await openBrindle(page, board.url);
  const light = cardOf(page, /Right step reads light/);
  const pen = await takePen(page);
  const before = (await exportSheet(page)).file;

  await light.getByRole("button", { name: /^Show a fix/ }).click();
  await expect(fixBar(page)).toContainText("The ink stays: frame 28 will be to redraw.");
  await expect(paperAt(page, 28).locator("svg[data-ghost]")).toBeVisible();
  await expect(paperAt(page, 25).locator("svg[data-ghost]")).toHaveCount(0);
  await expectAccessible(page, "a fix that is looked at");
  await page.keyboard.press("Escape");
  await expect(fixBar(page)).toBeHidden();
  expect((await exportSheet(page)).file).toEqual(before);

  await light.getByRole("button", { name: /^Lower the right down/ }).click();
  const doIt = fixBar(page).getByRole("button", { name: "Do it" });
  const box = await doIt.boundingBox();
  if (box === null) throw new Error("the button is not on screen");
  await pen.tap({ x: box.x + box.width / 2, y: box.y + box.height / 2 });
  await expect(light).toHaveCount(0);
  await expect(margin(page)).toContainText("2 to redraw");
  await expect(margin(page).getByRole("heading", { name: "2 drawings to redraw" })).toBeVisible();
  for (const view of ["side", "front"] as const) {
    await expect(paperAt(page, 28, view).locator("[data-to-redraw]")).toBeVisible();
  }
  await expectAccessible(page, "a panel to redraw");

  await page.keyboard.press("d");
  await pen.draw(await onScreen(paperAt(page, 28), across(300)));
  await expect(margin(page)).toContainText("1 to redraw");
  await margin(page)
    .getByRole("button", { name: /^Done: the front view of down, frame 28/ })
    .click();
  await expect(page.locator("[data-to-redraw]")).toHaveCount(0);
  for (let step = 0; step < 2; step += 1) await page.keyboard.press("Control+z");
  await expect(margin(page)).toContainText("2 to redraw");
  await page.keyboard.press("Control+z"); // the fix, both views and all marks, is one step
  await expect(light).toHaveCount(1);
  await expect(page.locator("[data-to-redraw]")).toHaveCount(0);
  expect((await exportSheet(page)).file).toEqual(before);
});

for (const [check, faulty] of Object.entries(FAULTY)) {
  test(`a fix by keys settles its remark: ${check}`, async ({ newcomer }) => {
    test.slow();
    const page = await newcomer();
    await page.goto(await sheetFrom(page, board.url, drawnFile(faulty())));
    await settled(page);
    const { remarks } = reviewWalk(faulty(), "trade");
    const title = remarks.find((remark) => remark.check === check)?.title ?? "";
    const cards = margin(page).getByRole("button", { name: `Show a fix: ${title}` });
    const before = (await exportSheet(page)).file;
    await cards.first().focus();
    await page.keyboard.press("Enter");
    await expect(fixBar(page).getByRole("button", { name: "Do it" })).toBeFocused();
    await page.keyboard.press("Enter");
    await expect(fixBar(page)).toBeHidden();
    await expect(margin(page).getByRole("button", { name: `Show a fix: ${title}` })).toHaveCount(0);
    await expect(cardOf(page, title)).toHaveCount(0);
    await expect(page.locator(":focus")).toHaveCount(1); // the keys go on from somewhere
    const { file } = await exportSheet(page);
    expect(file).not.toEqual(before);
    const moved = file.panels.filter(({ toRedraw }) => toRedraw !== undefined).length;
    // A stem that moves on the spot takes its drawing over the ground, so the marks of a gap move, too.
    const marksMove = !["missing-pose", "pose-order"].includes(check);
    expect(moved > 0).toBe(marksMove);
    await page.keyboard.press("Control+z");
    expect((await exportSheet(page)).file).toEqual(before);
  });
}

test("a new panel and new frames are seen on the strip before they are there", async ({
  newcomer,
}) => {
  test.slow();
  const page = await newcomer();
  const missing = FAULTY["missing-pose"]?.();
  if (missing === undefined) throw new Error("a pose can be missing");
  await page.goto(await sheetFrom(page, board.url, drawnFile(missing)));
  await settled(page);
  const frames = await framesOf(page);
  await margin(page)
    .getByRole("button", { name: /^Show a fix/ })
    .first()
    .click();
  await expect(page.locator("[data-ghost-column]")).toHaveCount(1);
  expect(await framesOf(page)).toEqual(frames);
  await fixBar(page).getByRole("button", { name: "Leave it" }).click();
  await expect(page.locator("[data-ghost-column]")).toHaveCount(0);
});

test("what one keeps on purpose, the other sees with its reason, and drops", async ({
  newcomer,
}) => {
  test.slow();
  const owner = await newcomer();
  await openBrindle(owner, board.url);
  await nameOneself(owner, "Ana");
  const guest = await newcomer();
  await guest.goto(await makeLink(owner, "draw"));
  await settled(guest);

  await tabTo(
    owner,
    margin(owner).getByRole("button", { name: "Keep on purpose: Left foot slips" }),
  );
  await owner.keyboard.press("Enter");
  const form = owner.getByRole("form", { name: "Keep on purpose" });
  await expect(form.getByRole("radio", { name: "in this panel" })).toBeFocused();
  await expectAccessible(owner, "a remark about to be kept");
  await owner.keyboard.press("ArrowDown");
  await form.getByLabel("Why, if you like to say").fill("the plank is wet");
  await owner.keyboard.press("Enter");
  await expect(form).toBeHidden();
  await expect(margin(owner).getByRole("heading", { name: "Remarks", level: 2 })).toBeFocused();

  await expect(margin(guest)).toContainText("2 on purpose");
  await expect(cardOf(guest, /Left foot slips/)).toHaveCount(0);
  await guest
    .getByRole("button", {
      name: "Kept on purpose at passing, frame 19: Left foot slips; open why",
    })
    .click();
  await expect(margin(guest)).toContainText("the plank is wet");
  await expect(margin(guest)).toContainText("Ana, on the left side");
  await expect(paperAt(guest, 19).locator("svg[data-kept]")).toBeVisible();
  await expectAccessible(guest, "what is kept on purpose");
  expect((await exportSheet(guest)).file.onPurpose).toHaveLength(2);

  await margin(guest)
    .getByRole("button", { name: "No longer on purpose: Left foot slips" })
    .click();
  await expect(cardOf(owner, /Left foot slips/)).toHaveCount(1);
  await guest.keyboard.press("Control+z");
  await expect(cardOf(owner, /Left foot slips/)).toHaveCount(0);
});

test("a critique link keeps on purpose and does not fix, a view link does neither", async ({
  newcomer,
}) => {
  test.slow();
  const owner = await newcomer();
  await openBrindle(owner, board.url);
  const critic = await newcomer();
  await critic.goto(await makeLink(owner, "critique"));
  const viewer = await newcomer();
  await viewer.goto(await makeLink(owner, "view"));
  for (const page of [critic, viewer]) {
    const later = page.getByRole("button", { name: "Later" });
    await expect(cardOf(page, /Left foot slips/)).toHaveCount(1);
    if (await later.isVisible()) await later.click();
    await expect(margin(page).getByRole("button", { name: /^Show a fix/ })).toHaveCount(0);
    await cardOf(page, /Left foot slips/)
      .getByRole("button", { name: /^Show where/ })
      .click();
    await page.keyboard.press("Enter");
    await expect(fixBar(page)).toHaveCount(0);
  }
  await expect(margin(viewer).getByRole("button", { name: /on purpose/ })).toHaveCount(0);

  await margin(critic).getByRole("button", { name: "Keep on purpose: Left foot slips" }).click();
  await critic.getByRole("button", { name: "Keep it" }).click();
  for (const page of [owner, viewer, critic]) {
    await expect(cardOf(page, /Left foot slips/)).toHaveCount(0);
  }
  await allSaved(owner);
  await critic.reload();
  await expect(margin(critic)).toContainText("2 on purpose");
});
