import { expect, ownBoard, test } from "../support/journey";
import { expectAccessible } from "../support/journey-axe";
import { moveFingers } from "../support/journey-fingers";
import { tabTo } from "../support/journey-keys";
import { labelOf, onScreen, paperAt } from "../support/journey-papers";
import {
  handOver,
  pictureOn,
  pictureOptions,
  pictureShown,
  pictureTray,
  placeOf,
  WIDE,
} from "../support/journey-pictures";
import { allSaved, startWalk } from "../support/journey-sheet";

const board = ownBoard();

test("keys alone put, move, scale and remove one", async ({ newcomer }) => {
  const page = await newcomer();
  await startWalk(page, board.url, "By keys");
  await tabTo(page, labelOf(page, 4));
  await page.keyboard.press("Space");
  const chooser = page.waitForEvent("filechooser"); // asked for early: the browser is told of it on the way
  await page.keyboard.press("i");
  const choose = pictureOptions(page).getByRole("button", { name: "Choose a picture" });
  await expect(choose).toBeFocused();
  await page.keyboard.press("Enter");
  await handOver(await chooser, WIDE);
  const paper = paperAt(page, 4);
  await pictureShown(paper);

  const move = pictureOptions(page).getByRole("button", { name: "Move it" });
  await tabTo(page, move);
  await page.keyboard.press("Enter");
  const grip = paper.getByRole("button", { name: /^Picture under the paper: drag/ });
  await expect(grip).toBeFocused();
  for (const key of ["ArrowRight", "ArrowRight", "Shift+ArrowDown", "+"])
    await page.keyboard.press(key);
  const { x, y, width, height } = await placeOf(paper);
  expect(width / 720).toBeCloseTo(1.02, 6);
  expect(x + width / 2).toBeCloseTo(360 + 12, 6);
  expect(y + height / 2).toBeCloseTo(600 + 60, 6);
  await page.keyboard.press("Enter");
  await expect(grip).toHaveCount(0);
  await expect(move).toBeFocused();
  await tabTo(page, pictureOptions(page).getByRole("button", { name: "Remove the picture" }));
  await page.keyboard.press("Enter");
  await expect(pictureOn(paper)).toHaveCount(0);
  await expect(pictureTray(page).getByRole("status")).toHaveText(
    "Picture removed. Undo brings it back.",
  );
  await page.keyboard.press("Control+z");
  await pictureShown(paper);
  await allSaved(page);
});

test("two fingers move and scale the picture that is held, and leave the desk alone", async ({
  newcomer,
}) => {
  const page = await newcomer({
    viewport: { width: 390, height: 844 },
    hasTouch: true,
    isMobile: true,
  });
  await startWalk(page, board.url, "By touch");
  await labelOf(page, 1).tap();
  await page.getByRole("button", { name: "Draw it large" }).tap();
  await page.getByRole("button", { name: "Picture under the paper" }).tap();
  const chooser = page.waitForEvent("filechooser");
  await pictureOptions(page).getByRole("button", { name: "Choose a picture" }).tap();
  await handOver(await chooser, WIDE);
  const paper = paperAt(page, 1);
  await pictureShown(paper);
  await pictureOptions(page).getByRole("button", { name: "Move it" }).tap();
  await expectAccessible(page, "a picture that is held, on a phone");
  const [before, size] = [await placeOf(paper), await paper.boundingBox()];
  const ways = await Promise.all(
    [
      [
        { x: 300, y: 600 },
        { x: 250, y: 600 },
        { x: 200, y: 600 },
      ],
      [
        { x: 500, y: 600 },
        { x: 550, y: 600 },
        { x: 600, y: 600 },
      ],
    ].map((way) => onScreen(paper, way)),
  );
  await moveFingers(page, ways); // twice as far apart
  await expect.poll(async () => (await placeOf(paper)).width / before.width).toBeCloseTo(2, 1);
  expect(await paper.boundingBox()).toEqual(size);
  await page.keyboard.press("Control+z");
  expect(await placeOf(paper)).toEqual(before); // one step
});
