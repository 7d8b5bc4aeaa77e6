import { type ElementHandle, expect, type Locator, type Page } from "@playwright/test";
import { focusOf } from "./seen-focus";

const MOST_STOPS = 120; // a page with more to step through is no page for the keyboard

/**
 * The least contrast between the line around what has the focus and what lies behind it.
 *
 * Source:  WCAG 2.2, 1.4.11 Non-text Contrast (AA): 3 : 1
 */
const LEAST_CONTRAST = 3;

/**
 * Goes with Tab until something has the focus. At every stop on the way the focus has to be seen: a
 * line around the element, or around the label or group that stands for it.
 */
export async function tabTo(page: Page, wanted: Locator, key = "Tab"): Promise<void> {
  await expect(wanted).toBeVisible();
  const passed: string[] = [];
  let sought = await find(wanted);
  for (let stop = 0; stop < MOST_STOPS; stop += 1) {
    await page.keyboard.press(key);
    passed.push(await expectFocusSeen(page));
    const place = await sought.evaluate((element) =>
      element.isConnected ? element === document.activeElement : null,
    );
    if (place === null) sought = await find(wanted); // drawn anew, on the way
    if (place ?? (await sought.evaluate((element) => element === document.activeElement))) return;
  }
  throw new Error(`${key} does not come to it; it comes to ${passed.join(" | ")}`);
}

/** Looked up once: by role and name that takes as long as all the rest of a stop. */
async function find(wanted: Locator): Promise<ElementHandle> {
  const found = await wanted.elementHandle();
  if (found === null) throw new Error("what is wanted is not on the page");
  return found;
}

/** Answers with the name of what has the focus. */
export async function expectFocusSeen(page: Page): Promise<string> {
  const { name, contrast } = await focusOf(page);
  if (contrast !== null) {
    expect(contrast, `the focus is seen on: ${name}`).toBeGreaterThanOrEqual(LEAST_CONTRAST);
  }
  return name;
}
