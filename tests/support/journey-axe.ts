import { AxeBuilder } from "@axe-core/playwright";
import { expect, type Page } from "@playwright/test";

/** Looks over what is on screen with axe, all rules of WCAG 2.2 A and AA and its best practices. */
export async function expectAccessible(page: Page, scene: string): Promise<void> {
  const { violations, passes } = await new AxeBuilder({ page }).analyze();
  const told = violations.map(({ id, help, nodes }) => ({
    rule: id,
    help,
    at: nodes.map(({ target, failureSummary }) => `${target.join(" ")}: ${failureSummary ?? ""}`),
  }));
  expect.soft(told, `axe on ${scene}`).toEqual([]);
  expect.soft(passes.length, `rules that axe could try on ${scene}`).toBeGreaterThan(8);
}
