import { AxeBuilder } from "@axe-core/playwright";
import { expect, type Page } from "@playwright/test";

type Found = Awaited<ReturnType<AxeBuilder["analyze"]>>;

/** As it lies in a page. */
interface Axe {
  run(where: Document, options: object): Promise<Found>;
}

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
  await handAxeTo(page);
  await stillness(page);
  // Of what is in order only the rule is asked for, and nothing is told of it but the count: to hand over
  // all that axe found takes as long as to find it. No page has films or sounds to load beforehand.
  const options = {
    ...{ resultTypes: ["violations"], preload: false },
    ...(rules === undefined ? {} : { runOnly: { type: "rule", values: rules } }),
  };
  const { told, tried } = await page.evaluate(async (asked) => {
    const { axe } = window as unknown as { axe: Axe };
    const { violations, passes, incomplete } = await axe.run(document, asked);
    const told = violations.map(({ id, help, nodes }) => ({
      rule: id,
      help,
      at: nodes.map(({ target, failureSummary }) => `${target.join(" ")}: ${failureSummary ?? ""}`),
    }));
    return { told, tried: passes.length + incomplete.length };
  }, options);
  expect.soft(told, `axe on ${scene}`).toEqual([]);
  return tried;
}

/** What fades in or out has done so: half gone, a word has less contrast than anybody is to read it with. */
async function stillness(page: Page): Promise<void> {
  await page.evaluate(async () => {
    const passing = document.getAnimations().filter(({ playState, effect }) => {
      const end = effect?.getComputedTiming().endTime;
      return playState === "running" && typeof end === "number" && Number.isFinite(end);
    });
    await Promise.allSettled(passing.map(({ finished }) => finished));
  });
}

/** No page has frames, so none need be awaited: what the builder leaves in the page is asked from there on. */
async function handAxeTo(page: Page): Promise<void> {
  if (await page.evaluate(() => "axe" in window)) return;
  await new AxeBuilder({ page }).setLegacyMode(true).withRules("document-title").analyze();
}
