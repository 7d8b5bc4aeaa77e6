import { expect, ownBoard, test } from "../support/journey";
import { expectAccessibleDayAndNight } from "../support/journey-axe";
import { cardOf, drawnFile, fixBar, margin, sheetFrom } from "../support/journey-fixes";
import { settled } from "../support/journey-sheet";
import { raise, walk } from "../support/walk";

const board = ownBoard();

test("a low up is told once, what else is read from it stands folded under it, and one fix settles all", async ({
  newcomer,
}) => {
  const page = await newcomer();
  const low = raise(walk(), "left up", -0.08);
  await page.goto(await sheetFrom(page, board.url, drawnFile(low)));
  await settled(page);
  const lead = cardOf(page, /Left step has no rise/).first();
  const fold = lead.locator("summary", { hasText: "Also read from this" });
  await expect(fold).toHaveText(
    "Also read from this: hips sink twice; hips stand unevenly at the up",
  );
  await expect(cardOf(page, /Hips sink twice/).filter({ visible: true })).toHaveCount(0);

  await fold.focus();
  await page.keyboard.press("Enter");
  const folded = lead.getByRole("article").filter({ hasText: "Hips sink twice" });
  await expect(folded).toBeVisible();
  await expectAccessibleDayAndNight(page, "remarks of one cause, unfolded");

  // One of them alone is kept on purpose; the others stay as they are.
  await folded.getByRole("button", { name: /on purpose/i }).click();
  await folded.getByRole("button", { name: "Keep it" }).click();
  await expect(fold).toHaveText("Also read from this: hips stand unevenly at the up");

  await lead.getByRole("button", { name: /^Show a fix: Left step has no rise/ }).click();
  await fixBar(page).getByRole("button", { name: "Do it" }).click();
  await expect(fold).toHaveCount(0);
  await expect(
    margin(page).getByRole("article").filter({ hasText: "unevenly at the up" }),
  ).toHaveCount(0);
});
