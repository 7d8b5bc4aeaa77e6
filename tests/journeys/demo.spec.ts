import { expect, ownBoard, test } from "../support/journey";
import { framesOf, settled, titleOf } from "../support/journey-sheet";

const board = ownBoard();

test("the demo opens from the start page as one's own copy, and the board finds what is planted", async ({
  newcomer,
}) => {
  const page = await newcomer();
  await page.goto(board.url);
  const card = page.getByRole("region", { name: "Look at the demo: Brindle of the Low Tide Post" });
  await card.getByRole("button", { name: "Open the demo" }).click();
  await settled(page);
  await expect(titleOf(page)).toContainText("Brindle carries the parcels");
  expect(await framesOf(page)).toEqual([1, 7, 13, 16, 19, 22, 25, 28, 31, 36, 37]);

  const margin = page.getByRole("complementary", { name: "Margin" });
  for (const remark of [
    "Right step reads light",
    "Left foot slips",
    "Right step is unevenly timed",
  ]) {
    await expect(margin).toContainText(remark);
  }

  await expect(margin).toContainText("1 on purpose");
  await expect(margin.getByText("Left shoulder stays low")).toBeHidden();
  await page.getByRole("button", { name: /^Kept on purpose at down, frame 28: Left/ }).click();
  await expect(margin.getByText("Left shoulder stays low")).toBeVisible();
  await expect(margin).toContainText("The sack weighs on it");

  const mine = page.url();
  const other = await newcomer();
  await other.goto(board.url);
  await other.getByRole("button", { name: "Open the demo" }).click();
  await settled(other);
  expect(other.url()).not.toBe(mine);
});
