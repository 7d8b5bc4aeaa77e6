import { expect, ownBoard, test } from "../support/journey";
import { tabTo } from "../support/journey-keys";
import { labelOf } from "../support/journey-papers";
import { allSaved, exportSheet, settled } from "../support/journey-sheet";

const board = ownBoard();

test("the keyboard alone lays out a strip, places and moves a mark, and prints", async ({
  newcomer,
}) => {
  const page = await newcomer();
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
    const before = await mark.getAttribute("aria-label");
    await keyboard.press("ArrowRight");
    await keyboard.press("Shift+ArrowDown");
    const [across = 0, down = 0] = (before ?? "").match(/\d+(?= across| down)/g)?.map(Number) ?? [];
    await expect(mark).toHaveAccessibleName(
      `right hip, side view, ${across + 1} across, ${down + 10} down`,
    );
  });

  await test.step("a stem's foot is moved", async () => {
    const foot = page.getByRole("slider", { name: "Frame of down left" });
    await tabTo(page, foot);
    await keyboard.press("ArrowRight");
    await expect(foot).toHaveAttribute("aria-valuetext", "frame 5");
  });

  await test.step("the print dialog opens, holds the focus, and gives it back", async () => {
    const print = page.getByRole("button", { name: "Print the sheet" });
    await tabTo(page, print, "Shift+Tab");
    await keyboard.press("Enter");
    const dialog = page.getByRole("dialog", { name: "Print the sheet" });
    await expect(dialog.getByRole("img")).toBeVisible();
    await tabTo(page, dialog.getByRole("button", { name: "Download" }));
    await keyboard.press("Escape");
    await expect(dialog).toBeHidden();
    await expect(print).toBeFocused();
  });

  await allSaved(page);
  const { file } = await exportSheet(page);
  expect(file.panels.find(({ frame }) => frame === 5)?.marks.side).toHaveProperty("right-hip");
});

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
