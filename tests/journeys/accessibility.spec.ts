import type { Page } from "@playwright/test";
import { expect, ownBoard, test } from "../support/journey";
import { expectAccessible } from "../support/journey-axe";
import { labelOf } from "../support/journey-papers";
import { allSaved, openCaptured, settled, startWalk, titleOf } from "../support/journey-sheet";

const board = ownBoard();

/** A stranger is refused, and an address without a page is not found: consoles say so. */
const REFUSAL = /status of 40[0-9]/;

/** The colour of the desk by day and by night, from the page's own tokens. */
const DESK = { light: "rgb(201, 194, 179)", dark: "rgb(42, 39, 34)" } as const;

const deskColour = (page: Page) =>
  page.evaluate(() => getComputedStyle(document.body).backgroundColor);

/** Opens a page over the board, looks it over, and closes it. */
async function lookOver(page: Page, name: string, open: () => Promise<void>): Promise<void> {
  await open();
  const dialog = page.getByRole("dialog", { name });
  await expect(dialog).toBeVisible();
  await expect(dialog.getByText(/Laying out the sheet|Fetching the links/)).toHaveCount(0);
  await expectAccessible(page, name);
  await page.keyboard.press("Escape");
  await expect(dialog).toBeHidden();
}

const press = (page: Page, name: string | RegExp) => () =>
  page.getByRole("button", { name }).click();

for (const colorScheme of ["light", "dark"] as const) {
  test(`axe finds nothing on the start page and the board, ${colorScheme}`, async ({
    newcomer,
  }) => {
    test.slow();
    const page = await newcomer({ colorScheme });
    await page.goto(board.url);
    expect(await deskColour(page)).toBe(DESK[colorScheme]);
    await expectAccessible(page, "the start page");
    await page.getByRole("button", { name: "Lay out the strip" }).click();
    await allSaved(page);
    await expectAccessible(page, "the empty board, its greeting open");
    await settled(page);

    await openCaptured(page, board.url);
    await page.getByRole("radio", { name: "trade" }).check(); // which has a remark
    await labelOf(page, 8).click();
    await expect(page.getByRole("heading", { name: "Readings · frame 8" })).toBeVisible();
    await expectAccessible(page, "the captured walk with a panel in hand");
    await page.keyboard.press("m");
    await expect(page.getByRole("region", { name: "Joints, side" })).toBeVisible();
    await expectAccessible(page, "the mark tool in hand");
    await page.getByRole("button", { name: "Draw it large" }).click();
    await expect(page.getByRole("region", { name: "Drawing desk" })).toBeVisible();
    await expectAccessible(page, "the drawing desk");
    await page.keyboard.press("Escape");

    await page.getByRole("button", { name: "Play the strip" }).click();
    await page.getByRole("button", { name: "¼" }).click();
    await expectAccessible(page, "the strip at play");
    await page.keyboard.press("Escape");
    await expect(page.getByRole("region", { name: "The strip at speed" })).toBeHidden();
  });

  test(`axe finds nothing on what opens over the board, ${colorScheme}`, async ({ newcomer }) => {
    test.slow();
    const page = await newcomer({ colorScheme });
    await openCaptured(page, board.url);
    await lookOver(page, "Print the sheet", press(page, "Print the sheet"));
    await lookOver(page, "Invite to this sheet", press(page, "Invite"));
    await lookOver(page, "Help", press(page, "Help"));
    await lookOver(page, "About this sheet", () => titleOf(page).click());
    await lookOver(page, "Your name and hue", press(page, /^You are here as /));
  });

  test(`axe finds nothing where one is not let in, ${colorScheme}`, async ({ newcomer }) => {
    const owner = await newcomer();
    await startWalk(owner, board.url, "Closed");
    const stranger = await newcomer({ colorScheme, mayComplain: REFUSAL });
    await stranger.goto(owner.url());
    await expect(
      stranger.getByRole("heading", { name: "This browser has no way into the sheet" }),
    ).toBeVisible();
    await expectAccessible(stranger, "the closed door");
    await stranger.goto(`${board.url}/nowhere`);
    await expect(
      stranger.getByRole("heading", { name: "There is nothing at this address" }),
    ).toBeVisible();
    await expectAccessible(stranger, "the page that is not there");
  });
}

test("the light is switched by hand and stays so", async ({ newcomer }) => {
  const page = await newcomer({ colorScheme: "light" });
  await page.goto(board.url);
  await page.getByRole("button", { name: "Light: as the system" }).click();
  await page.getByRole("button", { name: "Light: day" }).click();
  await expect(page.getByRole("button", { name: "Light: dim" })).toBeVisible();
  expect(await deskColour(page)).toBe(DESK.dark);
  await expectAccessible(page, "the start page, dimmed by hand");
  await openCaptured(page, board.url);
  expect(await deskColour(page)).toBe(DESK.dark);
  await expectAccessible(page, "the board, dimmed by hand");
  await page.reload();
  await allSaved(page);
  expect(await deskColour(page)).toBe(DESK.dark);
});

for (const [name, viewport] of [
  ["a telephone", { width: 390, height: 844 }],
  ["a tablet", { width: 1024, height: 768 }],
] as const) {
  for (const colorScheme of ["light", "dark"] as const) {
    test(`start page and board hold on ${name}, ${colorScheme}`, async ({ newcomer }) => {
      test.slow();
      const page = await newcomer({ viewport, colorScheme, hasTouch: true });
      const widest = () => page.evaluate(() => document.documentElement.scrollWidth);
      await page.goto(board.url);
      await expectAccessible(page, `the start page on ${name}`);
      expect(await widest()).toBeLessThanOrEqual(viewport.width);
      await openCaptured(page, board.url);
      await expectAccessible(page, `the board on ${name}`);
      expect(await widest()).toBeLessThanOrEqual(viewport.width);
      await expect(page.getByRole("button", { name: /^Print/ })).toBeInViewport();
      await expect(labelOf(page, 1)).toBeInViewport();

      const fold = page.getByRole("button", { name: /^Remarks/ });
      await fold.click();
      await expect(fold).toHaveAttribute("aria-expanded", "true");
      await expect(page.getByRole("radio", { name: "trade" })).toBeInViewport();
      await expectAccessible(page, `the margin drawn out on ${name}`);
      expect(await widest()).toBeLessThanOrEqual(viewport.width);
    });
  }
}
