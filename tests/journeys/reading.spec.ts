import { expect, ownBoard, test } from "../support/journey";
import { expectAccessibleDayAndNight } from "../support/journey-axe";
import { across, onScreen, paperAt } from "../support/journey-papers";
import { standAtReadersDoor } from "../support/journey-reader";
import { allSaved, listen, openBrindle } from "../support/journey-sheet";
import { takePen } from "../support/pen";

const board = ownBoard();

const SOUND = /nothing stands out|nothing so far|nothing in this walk|nothing that can be read/i;

test("the board is drawn on before the walk is read, calls nothing sound, and does not move when it is", async ({
  newcomer,
}) => {
  const page = await newcomer();
  const door = await standAtReadersDoor(page);
  await openBrindle(page, board.url);
  const margin = page.getByRole("complementary", { name: "Margin" });
  await expect(margin).toContainText("reading the sheet…");
  await expect(margin).toContainText("The sheet is being read.");
  await expect(margin).not.toContainText(SOUND);
  await expect(page.getByRole("button", { name: /^Remarks/ })).toHaveText("Remarks …");
  await expect(page.locator("[data-spoken]")).toHaveText("Reading the sheet.");
  await expectAccessibleDayAndNight(page, "a sheet that is being read");

  const pen = await takePen(page);
  await pen.draw(await onScreen(paperAt(page, 1), across(300)));
  await allSaved(page);

  const places = () =>
    page.locator("[data-column], figure").evaluateAll((all) =>
      all.map((one) => {
        const { x, y, width, height } = one.getBoundingClientRect();
        return [x, y, width, height].map(Math.round).join(" ");
      }),
    );
  const before = await places();
  const heard = await listen(page);
  door.letIn();
  await expect(margin).toContainText("Left foot slips");
  await expect(margin).toContainText("1 on purpose");
  expect(await places()).toEqual(before);
  await expect.poll(heard).toEqual([expect.stringMatching(/^The sheet is read: \d remarks\.$/)]);
});

test("what cannot be fetched to read the walk is told, and asked for again", async ({
  newcomer,
}) => {
  const page = await newcomer({ mayComplain: /net::ERR_FAILED/ });
  const door = await standAtReadersDoor(page);
  door.turnAway();
  await openBrindle(page, board.url);
  const margin = page.getByRole("complementary", { name: "Margin" });
  const again = margin.getByRole("button", { name: "Try again" });
  await expect(margin).toContainText("not read yet");
  await expect(margin).not.toContainText(SOUND);
  await expect(page.getByRole("button", { name: /^Remarks/ })).toHaveText("Remarks ?");
  await expect(page.locator("[data-spoken]")).toContainText("The sheet could not be read.");
  await expectAccessibleDayAndNight(page, "a sheet that could not be read");

  await test.step("nor does a print pass it off as read", async () => {
    await page.getByRole("button", { name: "Print the sheet" }).click();
    const print = page.getByRole("dialog", { name: "Print the sheet" });
    await expect(print.getByRole("alert")).toContainText(
      "the part of the board that reads the walk",
    );
    await print.getByRole("button", { name: "Try again" }).click();
    await expect(print.getByRole("alert")).toContainText("Is the line down?");
    await expectAccessibleDayAndNight(page, "a preview that could not be drawn");
    await print.getByRole("button", { name: "Close" }).click();
  });
  await test.step("asked for in vain, the button stays and keeps the focus", async () => {
    const before = door.asked();
    await again.focus();
    await again.press("Enter");
    await expect.poll(door.asked).toBeGreaterThan(before);
    await expect(again).toBeFocused();
    await expect(again).not.toHaveAttribute("aria-disabled", "true");
  });
  await test.step("asked for again when it comes, the walk is read", async () => {
    door.letIn();
    await again.press("Enter");
    await expect(margin).toContainText("Left foot slips");
    await expect(margin.getByRole("heading", { name: "Remarks", level: 2 })).toBeFocused();
  });
});

test("a line that comes back brings what reads the walk by itself", async ({ newcomer }) => {
  const page = await newcomer({ mayComplain: /net::ERR_FAILED/ });
  const door = await standAtReadersDoor(page);
  door.turnAway();
  await openBrindle(page, board.url);
  const margin = page.getByRole("complementary", { name: "Margin" });
  await expect(margin).toContainText("not read yet");
  door.letIn();
  await page.evaluate(() => dispatchEvent(new Event("online")));
  await expect(margin).toContainText("Left foot slips");
});

test("a line that lets nothing through is not waited for without end", async ({ newcomer }) => {
  const page = await newcomer();
  await page.clock.install();
  const door = await standAtReadersDoor(page);
  await openBrindle(page, board.url);
  const margin = page.getByRole("complementary", { name: "Margin" });
  await expect.poll(door.asked).toBeGreaterThan(0);
  await expect(margin).toContainText("reading the sheet…");
  await page.clock.fastForward(20_000);
  await expect(margin).toContainText("not read yet");
  door.letIn();
  await margin.getByRole("button", { name: "Try again" }).click();
  await expect(margin).toContainText("Left foot slips");
});
