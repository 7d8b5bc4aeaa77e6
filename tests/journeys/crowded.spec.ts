import type { Page } from "@playwright/test";
import { keyRemarks } from "../../lib/export";
import { reviewWalk } from "../../lib/gait";
import { crowdedWalk } from "../support/crowded-walk";
import { expect, ownBoard, test } from "../support/journey";
import { expectAccessible } from "../support/journey-axe";
import { drawnFile, margin, sheetFrom } from "../support/journey-fixes";
import { paperAt } from "../support/journey-papers";
import { choosePage, download, readSvg } from "../support/journey-print";
import { settled } from "../support/journey-sheet";

const board = ownBoard();

async function openCrowded(page: Page): Promise<void> {
  await page.goto(await sheetFrom(page, board.url, drawnFile(crowdedWalk())));
  await settled(page);
}

const more = (page: Page) => margin(page).locator("summary", { hasText: "more remarks" });
const places = (page: Page, title: string) =>
  margin(page).getByRole("button", { name: `Show where: ${title}, frame` });

test("more than twenty remarks are read a handful at a time, what is said twice said once", async ({
  newcomer,
}) => {
  const page = await newcomer();
  await openCrowded(page);
  const { remarks } = reviewWalk(crowdedWalk(), "trade");
  expect(remarks.length).toBeGreaterThan(20);

  const cards = margin(page).getByRole("article");
  await expect(cards.filter({ visible: true })).toHaveCount(5);
  const behind = cards.filter({ has: page.getByRole("heading", { name: /Weight is behind/ }) });
  await expect(behind.getByRole("heading")).toHaveText(
    /will show: Weight is behind the foot, left and right, 2 places/,
  );
  await expect(behind).toContainText("At the left passing, frame 19");
  await expectAccessible(page, "many remarks");
  // What is only heard of a remark below the fold makes the margin longer, and not the page.
  expect(await page.evaluate(() => document.documentElement.scrollHeight - innerHeight)).toBe(0);

  await more(page).click();
  await expect(more(page)).toContainText(/will show · \d+ may show/);
  await expect(places(page, "Right foot slips")).toBeVisible();
  await expectAccessible(page, "many remarks unfolded");
  await more(page).click();

  // The corner of a panel leads into the fold where what is seen there waits.
  await page.getByRole("button", { name: /at up, frame 34: open the remarks/ }).click();
  await expect(places(page, "Right foot sinks")).toBeInViewport();
});

test("a remark that the hand or the focus passes is drawn whole on its panel, and leaves again", async ({
  newcomer,
}) => {
  const page = await newcomer();
  await openCrowded(page);
  const paper = paperAt(page, 19);
  const drawn = paper.locator('[data-pointed="true"]');
  await expect(drawn).toHaveCount(0);
  await expect(paper.locator('[data-number="true"]')).not.toHaveCount(0);
  // What is of one cause has been folded together by then, and moves no more.
  await expect(margin(page).locator("summary", { hasText: "Also read from" })).not.toHaveCount(0);

  await more(page).click();
  const slip = places(page, "Left foot slips");
  await slip.hover();
  await expect(drawn).toHaveCount(1);
  await expect(paper).toContainText("slips 9.0 %");
  await page.mouse.move(1, 1);
  await expect(drawn).toHaveCount(0);

  await slip.focus();
  await expect(drawn).toHaveCount(1);
  await page.keyboard.press("Enter");
  await expect(slip).toHaveAttribute("aria-pressed", "true");
  await expect(paperAt(page, 19)).toHaveAttribute("data-in-hand", "true");
  await page.keyboard.press("Shift+Tab");
  await page.keyboard.press("Tab");
  await page.keyboard.press("Enter");
  await expect(slip).toHaveAttribute("aria-pressed", "false");

  // The card then speaks of the place that was asked for, and its fix and its reason belong to that.
  await places(page, "Right foot slips").click();
  const card = margin(page)
    .getByRole("article")
    .filter({ has: page.getByRole("heading", { name: /Foot slips/ }) });
  await expect(card).toContainText("The right foot carries the weight");
  await card.getByRole("button", { name: "Keep on purpose: Right foot slips" }).click();
  await card.getByRole("button", { name: "Keep it" }).click();
  await expect(margin(page)).toContainText("1 on purpose");
  await expect(places(page, "Right foot slips")).toHaveCount(0);
});

test("margin, panels and print know a remark by one number", async ({ newcomer }) => {
  const page = await newcomer();
  await openCrowded(page);
  await more(page).click();
  const place = places(page, "Right foot slips");
  const number = /\d+/.exec((await place.textContent()) ?? "")?.[0] ?? "";
  await expect(paperAt(page, 31).locator('[data-number="true"]', { hasText: number })).toHaveCount(
    1,
  );

  await page.getByRole("button", { name: "Print the sheet" }).click();
  const dialog = page.getByRole("dialog");
  await choosePage(dialog, /^One picture/);
  const { bytes } = await download(page, dialog, /SVG/);
  const reader = await page.context().newPage();
  const { texts, fault } = await readSvg(reader, bytes.toString("utf8"));
  expect(fault).toBeNull();
  const printed = new Set(texts.map(({ text }) => text));
  expect(printed).toContain(`${number} Right foot slips`);
  const walk = crowdedWalk();
  for (const { key, remark } of keyRemarks(reviewWalk(walk, "trade"), walk.panels)) {
    expect(printed).toContain(`${key} ${remark.title}`);
  }
});
