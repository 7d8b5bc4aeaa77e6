import type { Page } from "@playwright/test";
import { expect, ownBoard, test } from "../support/journey";
import { drawingDesk, printing, type Scene } from "../support/journey-scenes";
import { openBrindle, startWalk } from "../support/journey-sheet";
import { halfSized, steadyPicture } from "../support/steady-picture";

const board = ownBoard();

const SIZES = [
  { width: 1440, height: 900 },
  { width: 1024, height: 768 },
  { width: 390, height: 844 },
] as const;

/**
 * What two pictures of one state may differ by. Another build of Chromium smooths edges a little
 * otherwise, which halving the picture already evens out: a pixel counts as another from a fifth of the
 * greatest difference of colour (pixelmatch's measure), and one pixel in a thousand may. Our own choice:
 * on one machine two pictures of a state are the same; with the tray's words moved by 5 px, one pixel in
 * three hundred was another (tried).
 */
const TOLERANCE = { threshold: 0.2, maxDiffPixelRatio: 0.001 } as const;

const startPage: Scene = {
  name: "start page",
  enter: async (page) => void (await page.goto(board.url)),
  leave: async () => {},
};
const emptyStrip: Scene = {
  name: "empty strip",
  enter: (page) => startWalk(page, board.url, "A walk to be"),
  leave: async () => {},
};
const brindle: Scene = {
  name: "brindle",
  enter: (page) => openBrindle(page, board.url),
  leave: async () => {},
};
const remark: Scene = {
  name: "remark pointed out",
  async enter(page) {
    const show = page.getByRole("button", { name: "Show where: Left foot slips" });
    if (!(await show.isVisible())) await page.getByRole("button", { name: /^Remarks/ }).click();
    await show.click();
    await page.mouse.move(1, 1);
  },
  leave: async () => {},
};
const desk: Scene = { ...drawingDesk, name: "drawing desk" };
const print: Scene = { ...printing, name: "print" };

/** In this order each begins where the one before it ended. */
const SCENES = [startPage, emptyStrip, brindle, desk, print, remark];

async function compare(page: Page, name: string): Promise<void> {
  const picture = await halfSized(page, await steadyPicture(page));
  expect.soft(picture).toMatchSnapshot(`${name.replaceAll(" ", "-")}.png`, TOLERANCE);
}

for (const colorScheme of ["light", "dark"] as const) {
  for (const viewport of SIZES) {
    test(`the screens look as they did, ${viewport.width} wide, ${colorScheme}`, async ({
      newcomer,
    }) => {
      test.setTimeout(4 * 60_000);
      const page = await newcomer({
        ...{ viewport, colorScheme, hasTouch: viewport.width < 1200 },
        ...{ reducedMotion: "reduce", locale: "en-GB", timezoneId: "UTC" },
      });
      await page.clock.setFixedTime(new Date("2026-11-25T12:00:00Z")); // the print has its date
      await page.addInitScript(() => {
        // Else everybody gets a hue by chance, and is asked for a name.
        localStorage.setItem("heelstrip.me", JSON.stringify({ name: "Ana", hue: 215 }));
        localStorage.setItem("heelstrip.greeted", "yes");
      });
      for (const { name, enter, leave } of SCENES) {
        await test.step(name, async () => {
          await enter(page);
          await compare(page, `${name} ${viewport.width} ${colorScheme}`);
          await leave(page);
        });
      }
    });
  }
}
