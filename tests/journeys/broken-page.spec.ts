import { expect, ownBoard, test } from "../support/journey";
import { expectAccessibleDayAndNight } from "../support/journey-axe";
import { openCaptured } from "../support/journey-sheet";

const board = ownBoard();

const BROKEN = "Something went wrong on this page";

test("a page that breaks says what is safe, and goes on when loaded anew", async ({ newcomer }) => {
  const page = await newcomer({ mayComplain: /Class extends value|WebSocket/ });
  await openCaptured(page, board.url);
  // A browser without sockets: the board cannot even be set up.
  await page.addInitScript(() => {
    if (sessionStorage.getItem("whole") === null) Reflect.deleteProperty(window, "WebSocket");
  });
  await page.reload();
  await expect(page.getByRole("heading", { name: BROKEN })).toBeVisible();
  await expect(page.getByText("Ink that was called saved is safe.")).toBeVisible();
  await expectAccessibleDayAndNight(page, "the page that broke");
  await page.evaluate(() => sessionStorage.setItem("whole", "yes"));
  await page.getByRole("button", { name: "Reload" }).click();
  await expect(page.getByRole("region", { name: "Remarks" })).toBeVisible();
});
