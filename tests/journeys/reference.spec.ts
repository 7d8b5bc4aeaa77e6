import { expect, ownBoard, test } from "../support/journey";
import { expectAccessible } from "../support/journey-axe";
import { across, inkOn, labelOf, onScreen, paperAt } from "../support/journey-papers";
import {
  dropOn,
  pasteInto,
  pictureOn,
  pictureOptions,
  pictureShown,
  pictureTray,
  placeOf,
  TALL,
  WIDE,
  WIDE_FITTED,
} from "../support/journey-pictures";
import {
  allSaved,
  exportSheet,
  makeLink,
  settled,
  startWalk,
  titleOf,
} from "../support/journey-sheet";
import { takePen } from "../support/pen";

const board = ownBoard();

test("a picture is dropped, seen by others, dimmed, moved and taken back", async ({ newcomer }) => {
  test.slow();
  const owner = await newcomer();
  await startWalk(owner, board.url, "With a reference");
  const view = await makeLink(owner, "view");
  const viewer = await newcomer();
  await viewer.goto(view);
  const guest = await newcomer();
  await guest.goto(await makeLink(owner, "draw"));
  await settled(guest);
  const paper = paperAt(owner, 4);

  await test.step("the paper it is held over says so, and nothing happens before it is let go", async () => {
    await dropOn(paper, [WIDE], { letGo: false });
    await expect(paper.getByText("Put it under here")).toBeVisible();
    await expect(pictureOn(paper)).toHaveCount(0);
    await dropOn(paper, [WIDE]);
    await pictureShown(paper);
    await expect(paper.getByText("Put it under here")).toHaveCount(0);
    await expect(pictureTray(owner).getByRole("status")).toHaveText(
      "Picture put under frame 4, side. Undo takes it back.",
    );
    expect(await placeOf(paper)).toEqual(WIDE_FITTED);
    await allSaved(owner);
  });

  await test.step("the others see it, and who may only look has no hand on it", async () => {
    await pictureShown(paperAt(viewer, 4));
    await pictureShown(paperAt(guest, 4));
    expect(await placeOf(paperAt(viewer, 4))).toEqual(WIDE_FITTED);
    await expect(viewer.getByRole("button", { name: "Picture under the paper" })).toHaveCount(0);
    await viewer.keyboard.press("i");
    await expect(pictureOptions(viewer)).toHaveCount(0);
    await dropOn(paperAt(viewer, 7), [TALL]);
    await labelOf(viewer, 7).click();
    await pasteInto(viewer, [TALL]);
    await expect(pictureOn(paperAt(viewer, 7))).toHaveCount(0);
  });

  await test.step("it is dimmed with keys, in one step", async () => {
    await owner.keyboard.press("i");
    const dimmed = pictureOptions(owner).getByRole("slider", { name: /Dimmed/ });
    await expect(dimmed).toBeFocused();
    await owner.keyboard.press("ArrowRight");
    await owner.keyboard.press("ArrowRight");
    await expect(dimmed).toHaveAttribute("aria-valuetext", "60 %");
    await expect.poll(async () => (await placeOf(paperAt(guest, 4))).seen).toBeCloseTo(0.4, 9);
    await expectAccessible(owner, "the options of a picture");
  });

  await test.step("a pen moves it while it is held, and draws on it afterwards", async () => {
    await pictureOptions(owner).getByRole("button", { name: "Move it" }).click();
    await expectAccessible(owner, "a picture that is held");
    const pen = await takePen(owner);
    const way = [
      { x: 300, y: 500 },
      { x: 350, y: 560 },
      { x: 390, y: 620 },
    ];
    await pen.draw(await onScreen(paper, way));
    const moved = { ...WIDE_FITTED, x: 90, y: 480 };
    await expect.poll(async () => Math.round((await placeOf(paperAt(guest, 4))).x)).toBe(90);
    const now = await placeOf(paper);
    expect(Math.hypot(now.x - moved.x, now.y - moved.y)).toBeLessThan(8); // a pixel is 7 units here
    expect(await inkOn(paper)).toBe(0);
    await owner.keyboard.press("d");
    await pen.draw(await onScreen(paper, across(500)));
    await expect.poll(() => inkOn(paper)).toBeGreaterThan(20);
    expect((await placeOf(paper)).x).toBe(now.x);
  });

  await test.step("undo goes back through all of it", async () => {
    const back = async () => {
      await owner.keyboard.press("Control+z");
      return (await pictureOn(paper).count()) === 0 ? null : placeOf(paper);
    };
    await back(); // the stroke
    expect(await inkOn(paper)).toBe(0);
    expect(await back()).toMatchObject({ ...WIDE_FITTED, seen: expect.closeTo(0.4, 9) });
    await back();
    expect(await back()).toEqual(WIDE_FITTED); // one step for each press of the slider
    expect(await back()).toBeNull();
    await expect(pictureOn(paperAt(guest, 4))).toHaveCount(0);
    await owner.keyboard.press("Control+Shift+Z");
    await pictureShown(paperAt(guest, 4));
    await allSaved(owner);
  });
});

test("one is pasted, put under all panels, and left out of file and print", async ({
  newcomer,
}) => {
  const page = await newcomer();
  await startWalk(page, board.url, "Pasted");
  await titleOf(page).click();
  const about = page.getByRole("dialog", { name: "About this sheet" });
  await expect(about.getByText("under the paper")).toHaveCount(0);
  await about.getByRole("button", { name: "Close" }).click();

  await pasteInto(page, [TALL]); // no panel is in hand
  await expect(pictureTray(page).getByRole("alert")).toContainText("it needs a panel to lie under");
  await pictureTray(page).getByRole("button", { name: "Leave it" }).click();
  await labelOf(page, 7).click();
  await page.keyboard.press("v"); // the front view
  await pasteInto(page, [TALL]);
  const paper = paperAt(page, 7, "front");
  await pictureShown(paper);
  expect(await placeOf(paper)).toEqual({ x: 0, y: 0, width: 720, height: 1200, seen: 0.5 });

  await page.keyboard.press("i");
  await pictureOptions(page).getByRole("button", { name: "Under all panels" }).click();
  await expect(pictureTray(page).getByRole("status")).toHaveText(
    "Put under 8 more panels. Undo takes it back.",
  );
  for (const frame of [1, 25]) await pictureShown(paperAt(page, frame, "front"));
  await expect(
    pictureOptions(page).getByRole("button", { name: "Under all panels" }),
  ).toBeDisabled();

  const { file, text } = await exportSheet(page);
  expect(file.panels).toHaveLength(9);
  expect(text).not.toContain("picture");
  await titleOf(page).click();
  await expect(about.getByText("The 9 pictures under the paper: not in the file.")).toBeVisible();
  await about.getByRole("button", { name: "Close" }).click();
  await page.getByRole("button", { name: "Print the sheet" }).click();
  const print = page.getByRole("dialog", { name: "Print the sheet" });
  await expect(print.getByText("The 9 pictures under the paper: not printed.")).toBeVisible();
  await print.getByRole("button", { name: "Close" }).click();

  await page.keyboard.press("Control+z"); // all eight at once
  await expect(page.getByRole("img", { name: "Picture under the paper" })).toHaveCount(1);
  await page.reload();
  await pictureShown(paper);
});

test("a picture that does not come says so, and comes when it is asked for again", async ({
  newcomer,
}) => {
  const owner = await newcomer();
  await startWalk(owner, board.url, "Missed");
  await dropOn(paperAt(owner, 1), [WIDE]);
  await pictureShown(paperAt(owner, 1));
  const guest = await newcomer({ mayComplain: /ERR_FAILED/ });
  await guest.route("**/pictures/*", (route) => route.abort());
  await guest.goto(await makeLink(owner, "draw"));
  await settled(guest);
  await expect(pictureOn(paperAt(guest, 1))).toHaveAttribute("data-coming", "missed");
  await expect(pictureTray(guest).getByRole("status").first()).toContainText(
    "A picture did not come",
  );
  await expectAccessible(guest, "a picture that did not come");
  await guest.unroute("**/pictures/*");
  await pictureTray(guest).getByRole("button", { name: "Try again" }).click();
  await pictureShown(paperAt(guest, 1));
  await expect(pictureTray(guest)).not.toContainText("A picture did not come");
});
