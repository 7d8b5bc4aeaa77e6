import type { Page } from "@playwright/test";
import { expect, ownBoard, test } from "../support/journey";
import { expectAccessible, expectAccessibleDayAndNight } from "../support/journey-axe";
import { labelOf } from "../support/journey-papers";
import { BOARD_SCENES, drawingDesk, printing, type Scene } from "../support/journey-scenes";
import { allSaved, openBrindle, settled } from "../support/journey-sheet";

const board = ownBoard();

/** The colour of the desk by day and by night, from the page's own tokens. */
const DESK = { light: "rgb(201, 194, 179)", dark: "rgb(42, 39, 34)" } as const;
const MINUTES = 60_000;

const deskColour = (page: Page) =>
  page.evaluate(() => getComputedStyle(document.body).backgroundColor);

async function lookOver(page: Page, { name, enter, leave }: Scene, where = ""): Promise<void> {
  await test.step(name, async () => {
    await enter(page);
    await expectAccessibleDayAndNight(page, `${name}${where}`);
    await leave(page);
  });
}

test("axe finds nothing on the start page and a new strip, by day and by night", async ({
  newcomer,
}) => {
  test.slow();
  const page = await newcomer({ colorScheme: "light" });
  await page.goto(board.url);
  for (const colorScheme of ["dark", "light"] as const) {
    await page.emulateMedia({ colorScheme });
    expect(await deskColour(page)).toBe(DESK[colorScheme]);
  }
  await expectAccessibleDayAndNight(page, "the start page");
  await page.getByRole("button", { name: "Lay out the strip" }).click();
  await allSaved(page);
  await expectAccessibleDayAndNight(page, "the empty strip, its greeting open");
  await settled(page);
  await expectAccessibleDayAndNight(page, "the empty strip");
});

test("axe finds nothing on any state of the board, by day and by night", async ({ newcomer }) => {
  test.setTimeout(15 * MINUTES); // one page goes through them all; two minutes on a free machine
  const page = await newcomer({ colorScheme: "light" });
  await openBrindle(page, board.url);
  for (const scene of BOARD_SCENES) await lookOver(page, scene);

  const shows = page.getByRole("button", { name: /^Show where: / });
  const count = await shows.count();
  expect(count).toBeGreaterThanOrEqual(3);
  for (let at = 0; at < count; at += 1) {
    const show = shows.nth(at);
    const pointed = {
      name: `remark ${at + 1} pointed out`,
      enter: () => show.click(),
      leave: () => show.click(),
    };
    await lookOver(page, pointed);
  }
  for (const fold of await page.locator("aside summary").all()) await fold.click();
  await expectAccessibleDayAndNight(page, "every fold of the margin open");
});

test("the light is switched by hand and stays so", async ({ newcomer }) => {
  const page = await newcomer({ colorScheme: "light" });
  await page.goto(board.url);
  await page.getByRole("button", { name: "Light: as the system" }).click();
  await page.getByRole("button", { name: "Light: day" }).click();
  await expect(page.getByRole("button", { name: "Light: dim" })).toBeVisible();
  expect(await deskColour(page)).toBe(DESK.dark);
  await expectAccessible(page, "the start page, dimmed by hand");
  await openBrindle(page, board.url);
  expect(await deskColour(page)).toBe(DESK.dark);
  await page.reload();
  await allSaved(page);
  expect(await deskColour(page)).toBe(DESK.dark);
});

for (const [name, viewport] of [
  ["a telephone", { width: 390, height: 844 }],
  ["a tablet", { width: 1024, height: 768 }],
] as const) {
  test(`start page and board hold on ${name}, by day and by night`, async ({ newcomer }) => {
    test.setTimeout(4 * MINUTES);
    const page = await newcomer({ viewport, colorScheme: "light", hasTouch: true });
    const widest = () => page.evaluate(() => document.documentElement.scrollWidth);
    const fits = async () => expect(await widest()).toBeLessThanOrEqual(viewport.width);
    await page.goto(board.url);
    await expectAccessibleDayAndNight(page, `the start page on ${name}`);
    await fits();
    await openBrindle(page, board.url);
    await expectAccessibleDayAndNight(page, `the board on ${name}`);
    await fits();
    await expect(page.getByRole("button", { name: /^Print/ })).toBeInViewport();
    await expect(labelOf(page, 1)).toBeInViewport();
    for (const scene of [drawingDesk, printing]) {
      const enter = (of: Page) => scene.enter(of).then(fits);
      await lookOver(page, { ...scene, enter }, ` on ${name}`);
    }

    const fold = page.getByRole("button", { name: /^Remarks/ });
    await fold.click();
    await expect(fold).toHaveAttribute("aria-expanded", "true");
    await expect(page.getByRole("radio", { name: "trade" })).toBeInViewport();
    await expectAccessibleDayAndNight(page, `the margin drawn out on ${name}`);
    await fits();
    await page
      .getByRole("button", { name: /^Show where: / })
      .first()
      .click();
    await expectAccessibleDayAndNight(page, `a remark pointed out on ${name}`);
    await fits();
  });
}
