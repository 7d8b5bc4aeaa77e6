import { CHECK_IDS, METHODS } from "../../lib/gait";
import { expect, ownBoard, test } from "../support/journey";
import { expectAccessibleDayAndNight } from "../support/journey-axe";
import { openBrindle } from "../support/journey-sheet";

const board = ownBoard();

test("a remark leads to how it is measured, and the board stays", async ({ newcomer }) => {
  const page = await newcomer();
  await openBrindle(page, board.url);
  const margin = page.getByRole("complementary", { name: "Margin" });
  const card = margin.getByRole("article").filter({ hasText: "Left foot slips" });
  await card.getByText("Why this number").click();
  const opening = page.context().waitForEvent("page");
  await card.getByRole("link", { name: /^How this is measured: planted foot/ }).click();
  const methods = await opening;
  await expect(methods).toHaveURL(/\/methods#slide$/);
  const slide = methods.getByRole("region", { name: "Planted foot" });
  await expect(slide).toBeInViewport();
  await expect(slide.getByRole("img", { name: /^A planted foot in two panels/ })).toBeVisible();
  await expect(slide.getByRole("row", { name: /heel, forward, contact to passing/ })).toContainText(
    /above 5.% of a leg/,
  );
  await expect(card).toBeVisible();
});

test("how the readings are made can be read without a link to a sheet and without scripts", async ({
  newcomer,
}) => {
  const page = await newcomer({ javaScriptEnabled: false });
  await page.goto(board.url);
  await page.getByRole("link", { name: "How the readings are made" }).click();
  const contents = page.getByRole("navigation", { name: "On this page" });
  const told = CHECK_IDS.filter((id) => METHODS.some(({ check }) => check === id));
  for (const id of told) {
    await expect(contents.locator(`a[href="#${id}"]`)).toHaveCount(1);
    await expect(page.locator(`section[id="${id}"] svg[role="img"]`)).toHaveCount(1);
  }
  await contents.getByRole("link", { name: "Roll of the foot" }).click();
  await expect(page.getByRole("heading", { name: "Roll of the foot" })).toBeInViewport();
});

test("axe finds nothing on how the readings are made, by day and by night", async ({
  newcomer,
}) => {
  const page = await newcomer();
  for (const viewport of [
    { width: 1440, height: 900 },
    { width: 390, height: 844 },
  ]) {
    await page.setViewportSize(viewport);
    await page.goto(`${board.url}/methods`);
    await expectAccessibleDayAndNight(page, `how the readings are made, ${viewport.width} wide`);
    const widest = await page.evaluate(() => document.documentElement.scrollWidth);
    expect(widest).toBeLessThanOrEqual(viewport.width);
  }
});
