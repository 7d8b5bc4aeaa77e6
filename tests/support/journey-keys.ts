import { expect, type Locator, type Page } from "@playwright/test";

const MOST_STOPS = 120; // a page with more to step through is no page for the keyboard

/**
 * Goes with Tab until something has the focus. At every stop on the way the focus has to be seen: an
 * outline on the element, or on the label or group that stands for it.
 */
export async function tabTo(page: Page, wanted: Locator, key = "Tab"): Promise<void> {
  await expect(wanted).toBeVisible();
  const passed: string[] = [];
  for (let stop = 0; stop < MOST_STOPS; stop += 1) {
    await page.keyboard.press(key);
    const { name, shown } = await focusOf(page);
    expect(shown, `the focus is seen on: ${name}`).toBe(true);
    if (await wanted.evaluate((element) => element === document.activeElement)) return;
    passed.push(name);
  }
  throw new Error(`${key} does not come to it; it comes to ${passed.join(" | ")}`);
}

function focusOf(page: Page): Promise<{ name: string; shown: boolean }> {
  return page.evaluate(() => {
    const element = document.activeElement;
    if (element === null || element === document.body) return { name: "the page", shown: true };
    const label = element.closest("label");
    const drawn = [element, ...element.children, ...(label === null ? [] : [label])];
    const shown = drawn.some((part) => {
      const { outlineStyle, outlineWidth } = getComputedStyle(part);
      return outlineStyle !== "none" && Number.parseFloat(outlineWidth) > 0;
    });
    const said = element.getAttribute("aria-label") ?? element.textContent ?? "";
    return { name: `${element.tagName.toLowerCase()} ${said.trim().slice(0, 40)}`, shown };
  });
}
