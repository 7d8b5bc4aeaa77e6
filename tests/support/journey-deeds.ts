import type { Page } from "@playwright/test";
import type { Dice } from "./dice";
import { across, onScreen } from "./journey-papers";
import { takePen } from "./pen";

/** What one person does at the board; answers whether it could be done. */
export type Deed = (page: Page) => Promise<boolean>;

const BRIEFLY = { timeout: 1500 }; // what is not there by then, another hand has taken away

/** Everything that is thrown for, each from dice of its own. */
const THROWN: Readonly<Record<string, (throws: Dice) => Deed>> = {
  draw: (throws) => {
    const [share, at] = [throws.below(100) / 100, 200 + throws.below(800)];
    const view = throws.of(["side", "front"]);
    return (page) =>
      onPanel(page, share, async (column) => {
        await page.keyboard.press("d");
        const pen = await takePen(page);
        await pen.draw(await onScreen(column.locator(`[data-view=${view}]`), across(at)));
      });
  },
  mark: (throws) => {
    const [share, x, y] = [
      throws.below(100) / 100,
      200 + throws.below(300),
      500 + throws.below(500),
    ];
    return (page) =>
      onPanel(page, share, async (column) => {
        await page.keyboard.press("m");
        const pen = await takePen(page);
        const [point] = await onScreen(column.locator("[data-view=side]"), [{ x, y }]);
        if (point !== undefined) await pen.tap(point);
        await page.keyboard.press("d");
      });
  },
  "pass on": (throws) => {
    const [share, key] = [throws.below(100) / 100, throws.of(["c", "x", "p", "b"])];
    return (page) =>
      onPanel(page, share, async () => {
        await page.keyboard.press(key);
        const form = page.getByRole("region", { name: "Pass on" }).getByRole("group");
        await form.getByRole("button", { name: "Do it" }).click(BRIEFLY);
      });
  },
  "even out": () => async (page) => {
    await page.keyboard.press("e");
    const bar = page.getByRole("form", { name: "Even out" });
    return briefly(page, () => bar.getByRole("button", { name: "Even out" }).click(BRIEFLY));
  },
  gather: (throws) => {
    const [share, deed] = [throws.below(100) / 100, throws.of(["Blue", "Larger", "Turn left"])];
    return (page) =>
      onPanel(page, share, async () => {
        await page.keyboard.press("g");
        const tray = page.getByRole("region", { name: "Gathered" });
        await tray.getByRole("button", { name: "Gather all of this view" }).click(BRIEFLY);
        await tray.getByRole("button", { name: deed }).click(BRIEFLY);
        await page.keyboard.press("Escape");
        await page.keyboard.press("d");
      });
  },
  fix: (throws) => {
    const share = throws.below(100) / 100;
    return (page) =>
      briefly(page, async () => {
        const fixes = page.getByRole("button", { name: /^Show a fix: / });
        await fixes.nth(Math.floor(share * (await fixes.count()))).click(BRIEFLY);
        const bar = page.getByRole("region", { name: "A fix, shown before it is done" });
        await bar.getByRole("button", { name: "Do it" }).click(BRIEFLY);
      });
  },
  slide: (throws) => {
    const [share, key] = [throws.below(100) / 100, throws.of(["ArrowLeft", "ArrowRight"])];
    return (page) => onPanel(page, share, () => page.keyboard.press(`Alt+${key}`));
  },
  add: (throws) => {
    const share = throws.below(100) / 100;
    return (page) => onPanel(page, share, () => page.keyboard.press("n"));
  },
  undo: () => async (page) => {
    await page.keyboard.press("Control+z");
    return true;
  },
};

export const DEEDS = Object.keys(THROWN);

/** Throws for a deed and everything about it. */
export function deal(throws: Dice): { readonly name: string; readonly deed: Deed } {
  const name = throws.of(DEEDS);
  const thrown = THROWN[name];
  if (thrown === undefined) throw new RangeError(`no deed ${name}`);
  return { name, deed: thrown(throws) };
}

/** Takes a panel in hand, by its share of the strip, and goes on with it there. */
function onPanel(
  page: Page,
  share: number,
  goOn: (column: ReturnType<Page["locator"]>) => Promise<unknown>,
): Promise<boolean> {
  return briefly(page, async () => {
    const columns = page.locator("[data-column]");
    const at = Math.floor(share * (await columns.count()));
    const id = await columns.nth(at).getAttribute("data-column", BRIEFLY);
    const column = page.locator(`[data-column="${id}"]`);
    await column.getByRole("button").first().click(BRIEFLY);
    await goOn(column);
  });
}

/** Tries it; what another hand has made impossible meanwhile is left, and the board put at rest. */
async function briefly(page: Page, tried: () => Promise<unknown>): Promise<boolean> {
  try {
    await tried();
    return true;
  } catch {
    await page.keyboard.press("Escape");
    await page.keyboard.press("d");
    return false;
  }
}
