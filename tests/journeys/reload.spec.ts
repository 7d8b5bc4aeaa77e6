import { expect, ownBoard, test } from "../support/journey";
import { across, inkOn, labelOf, onScreen, paperAt } from "../support/journey-papers";
import { allSaved, exportSheet, framesOf, startWalk } from "../support/journey-sheet";
import { takePen } from "../support/pen";

const board = ownBoard();

test("a reload keeps everything, and a removed panel stays removed", async ({ newcomer }) => {
  const page = await newcomer();
  await startWalk(page, board.url, "Kept");
  const pen = await takePen(page);
  await pen.draw(await onScreen(paperAt(page, 1), across(400)));
  await pen.draw(await onScreen(paperAt(page, 4, "front"), across(500)));
  await page.keyboard.press("m");
  const joints = page.getByRole("region", { name: "Joints, side" });
  const [hip] = await onScreen(paperAt(page, 7), [{ x: 360, y: 640 }]);
  await expect(page.getByRole("group", { name: "Marks, side view" }).first()).toBeVisible();
  if (hip !== undefined) await pen.tap(hip);
  await expect(joints.getByRole("button", { name: "right hip, placed" })).toBeVisible();

  await page.getByRole("slider", { name: "Frame of contact right" }).press("ArrowRight");
  await expect.poll(() => framesOf(page)).toEqual([1, 4, 7, 10, 14, 16, 19, 22, 25]);

  await test.step("a removal can be taken back before the reload", async () => {
    await labelOf(page, 4).click();
    await page.getByRole("button", { name: "Remove it" }).click();
    await expect.poll(() => framesOf(page)).toEqual([1, 7, 10, 14, 16, 19, 22, 25]);
    await page.getByRole("button", { name: "Undo" }).click();
    await expect.poll(() => framesOf(page)).toEqual([1, 4, 7, 10, 14, 16, 19, 22, 25]);
    await expect.poll(() => inkOn(paperAt(page, 4, "front"))).toBeGreaterThan(20);
  });

  await labelOf(page, 22).click();
  await page.keyboard.press("Delete");
  await expect.poll(() => framesOf(page)).toEqual([1, 4, 7, 10, 14, 16, 19, 25]);
  await allSaved(page);
  const before = await exportSheet(page);

  await page.reload();
  await allSaved(page);
  expect(await framesOf(page)).toEqual([1, 4, 7, 10, 14, 16, 19, 25]);
  await expect.poll(() => inkOn(paperAt(page, 1))).toBeGreaterThan(20);
  await expect.poll(() => inkOn(paperAt(page, 4, "front"))).toBeGreaterThan(20);
  const after = await exportSheet(page);
  expect(after.file).toEqual(before.file);
  const marked = after.file.panels.filter(({ marks }) => marks.side["right-hip"] !== undefined);
  expect(marked.map(({ frame }) => frame)).toEqual([7]);
});
