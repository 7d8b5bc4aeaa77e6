import { AxeBuilder } from "@axe-core/playwright";
import { expect, type Page } from "@playwright/test";

/** What can differ by the light alone: the theme changes colours and nothing else. */
const RULES_OF_COLOUR = ["color-contrast", "link-in-text-block"];

/** Looks over what is on screen with axe, all rules of WCAG 2.2 A and AA and its best practices. */
export async function expectAccessible(page: Page, scene: string): Promise<void> {
  const tried = await lookWith(page, scene);
  expect.soft(tried, `rules that axe could try on ${scene}`).toBeGreaterThan(8);
}

/** The same by day and by night: whole by day, and by night, which changes colours alone, for those. */
export async function expectAccessibleDayAndNight(page: Page, scene: string): Promise<void> {
  await expectAccessible(page, `${scene}, by day`);
  await page.emulateMedia({ colorScheme: "dark" });
  const tried = await lookWith(page, `${scene}, by night`, RULES_OF_COLOUR);
  expect.soft(tried, `whether axe saw any colour on ${scene}, by night`).toBeGreaterThan(0);
  await page.emulateMedia({ colorScheme: "light" });
}

/** Answers how many rules had something to look at. */
async function lookWith(page: Page, scene: string, rules?: string[]): Promise<number> {
  // No page has frames, so none need be awaited in a page of its own; and of what is in order only
  // the rule is asked for, not every element. Both together take a fifth of the time.
  // Nor need it be handed to a page that has it, or look for films and sounds, which no page has.
  const isThere = await page.evaluate(() => "axe" in window);
  const axe = new AxeBuilder({ page, ...(isThere ? { axeSource: "axe" } : {}) });
  axe.setLegacyMode(true).options({
    ...{ resultTypes: ["violations"], preload: false },
    ...(rules === undefined ? {} : { runOnly: { type: "rule", values: rules } }),
  });
  const { violations, passes, incomplete } = await axe.analyze();
  const told = violations.map(({ id, help, nodes }) => ({
    rule: id,
    help,
    at: nodes.map(({ target, failureSummary }) => `${target.join(" ")}: ${failureSummary ?? ""}`),
  }));
  expect.soft(told, `axe on ${scene}`).toEqual([]);
  return passes.length + incomplete.length;
}
