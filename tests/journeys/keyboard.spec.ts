import { expect, ownBoard, test } from "../support/journey";
import { expectFocusSeen, tabTo } from "../support/journey-keys";
import { labelOf, paperAt } from "../support/journey-papers";
import { pngHead } from "../support/journey-print";
import { allSaved, contentOf, exportSheet, listen, settled } from "../support/journey-sheet";

const board = ownBoard();

for (const colorScheme of ["light", "dark"] as const) {
  test(`keys alone go from the start page to a printed sheet, ${colorScheme}`, async ({
    newcomer,
  }) => {
    test.slow(); // it stops at every control on the way
    const page = await newcomer({ colorScheme });
    const { keyboard } = page;
    await page.goto(board.url);
    await tabTo(page, page.getByLabel("Name of the walk"));
    await keyboard.type("By keys alone");
    await tabTo(page, page.getByRole("button", { name: "Lay out the strip" }));
    await keyboard.press("Enter");
    await allSaved(page);

    await test.step("the greeting is answered", async () => {
      await tabTo(page, page.getByRole("button", { name: "Later" }));
      await keyboard.press("Enter");
      await expect(page.getByRole("region", { name: "Introduce yourself" })).toBeHidden();
    });

    await test.step("a panel is taken in hand and a joint marked on it", async () => {
      await tabTo(page, labelOf(page, 4));
      await keyboard.press("Space");
      await expect(labelOf(page, 4)).toHaveAttribute("aria-pressed", "true");
      await keyboard.press("m");
      await tabTo(page, page.getByRole("button", { name: "Place right hip" }), "Shift+Tab");
      await keyboard.press("Enter");
      const mark = page.getByRole("button", { name: /^right hip, side view, / });
      await expect(mark).toBeFocused();
      await expectFocusSeen(page);
      const before = await mark.getAttribute("aria-label");
      await keyboard.press("ArrowRight");
      await keyboard.press("Shift+ArrowDown");
      const [across = 0, down = 0] =
        (before ?? "").match(/\d+(?= across| down)/g)?.map(Number) ?? [];
      await expect(mark).toHaveAccessibleName(
        `right hip, side view, ${across + 1} across, ${down + 10} down`,
      );
      await keyboard.press("d");
    });

    await test.step("the pose is passed on to the next panel, and taken back", async () => {
      await tabTo(page, labelOf(page, 7));
      await keyboard.press("Space");
      await keyboard.press("c");
      await expect(page.getByRole("group", { name: /^Copy/ })).toBeVisible();
      await expectFocusSeen(page);
      await keyboard.press("Enter");
      await expect(page.getByRole("group", { name: /^Copy/ })).toBeHidden();
      await expect(paperAt(page, 7)).toHaveAccessibleDescription(/ 1 joint marked$/);
      const heard = await listen(page);
      await keyboard.press("Control+z");
      await expect.poll(heard).toContain("Undone.");
      await expect(paperAt(page, 7)).toHaveAccessibleDescription(/ no joints marked$/);
    });

    await test.step("a stem's foot is moved", async () => {
      const foot = page.getByRole("slider", { name: "Frame of down left" });
      await tabTo(page, foot);
      await keyboard.press("ArrowRight");
      await expect(foot).toHaveAttribute("aria-valuetext", "frame 5");
    });

    await test.step("the charts are read as a table, and the focus comes back", async () => {
      const table = page.getByRole("button", { name: "gaps: read as a table" });
      await tabTo(page, table);
      await keyboard.press("Enter");
      await expect(page.getByRole("dialog")).toBeVisible();
      await expectFocusSeen(page);
      await keyboard.press("Escape");
      await expect(table).toBeFocused();
    });

    await test.step("a panel is removed, which is said, and brought back", async () => {
      await tabTo(page, labelOf(page, 22), "Shift+Tab");
      await keyboard.press("Space");
      const heard = await listen(page);
      await keyboard.press("Delete");
      await expect.poll(heard).toContain("Panel removed. Undo brings it back.");
      await expect(labelOf(page, 22)).toHaveCount(0);
      await keyboard.press("Control+z");
      await expect(labelOf(page, 22)).toBeVisible();
    });

    await test.step("the sheet is printed, and the focus given back", async () => {
      const print = page.getByRole("button", { name: "Print the sheet" });
      await tabTo(page, print, "Shift+Tab");
      await keyboard.press("Enter");
      const dialog = page.getByRole("dialog", { name: "Print the sheet" });
      await expect(dialog.getByRole("img").first()).toBeVisible();
      await tabTo(page, dialog.getByRole("button", { name: "Download" }));
      const begun = page.waitForEvent("download");
      await keyboard.press("Enter");
      const picture = await contentOf(await begun);
      expect(pngHead(picture).width).toBeGreaterThan(1000);
      await expectFocusSeen(page);
      await keyboard.press("Escape");
      await expect(dialog).toBeHidden();
      await expect(print).toBeFocused();
    });

    await allSaved(page);
    const { file } = await exportSheet(page);
    expect(file.panels.find(({ frame }) => frame === 5)?.marks.side).toHaveProperty("right-hip");
  });
}

test("the yardstick is chosen and a panel drawn large by keys", async ({ newcomer }) => {
  const page = await newcomer();
  await page.goto(board.url);
  await tabTo(page, page.getByRole("button", { name: "Open the captured walk" }));
  await page.keyboard.press("Enter");
  await settled(page);
  const life = page.getByRole("radio", { name: "life" });
  await expect(life).toBeChecked(); // a captured walk is held against captured walks
  await tabTo(page, life, "Shift+Tab");
  await page.keyboard.press("ArrowLeft");
  await expect(page.getByRole("radio", { name: "trade" })).toBeChecked();

  await tabTo(page, labelOf(page, 1));
  await page.keyboard.press("Enter");
  await expect(page.getByRole("region", { name: "Drawing desk" })).toBeVisible();
  await tabTo(page, page.getByRole("button", { name: "To the strip" }), "Shift+Tab");
  await page.keyboard.press("Enter");
  await expect(labelOf(page, 1)).toBeVisible();
});
