import type { Page } from "@playwright/test";
import { expect, ownBoard, test } from "../support/journey";
import { expectAccessibleDayAndNight } from "../support/journey-axe";
import { layLine } from "../support/journey-line";
import { allSaved, makeLink, openBrindle, stateLine } from "../support/journey-sheet";

const board = ownBoard();

/** A refusal, and a line that is down: consoles say so. */
const EXPECTED = /status of 40[0-9]|WebSocket connection to|net::ERR_CONNECTION/;

const heading = (page: Page, name: string | RegExp) => page.getByRole("heading", { name });

test("axe finds nothing for those who look, or are not let in, by day and by night", async ({
  newcomer,
}) => {
  test.slow();
  const owner = await newcomer();
  await openBrindle(owner, board.url);
  for (const role of ["view", "critique"] as const) {
    const address = await makeLink(owner, role);
    const guest = await newcomer();
    await guest.goto(address);
    await expect(stateLine(guest)).toHaveText(/view only|critique: /);
    await expectAccessibleDayAndNight(guest, `Brindle by a ${role} link`);
  }

  const stranger = await newcomer({ mayComplain: EXPECTED });
  await stranger.goto(owner.url());
  await expect(heading(stranger, "This browser has no way into the sheet")).toBeVisible();
  await expectAccessibleDayAndNight(stranger, "the closed door");
  await stranger.goto(`${board.url}/nowhere`);
  await expect(heading(stranger, "There is nothing at this address")).toBeVisible();
  await expectAccessibleDayAndNight(stranger, "the page that is not there");
});

test("axe finds nothing while the line is down, or the link withdrawn, by day and by night", async ({
  newcomer,
}) => {
  test.slow();
  const line = await layLine(board.url);
  const owner = await newcomer({ mayComplain: EXPECTED });
  await openBrindle(owner, line.url);
  const address = await makeLink(owner, "draw", "Gus");
  const guest = await newcomer({ mayComplain: EXPECTED });
  await guest.goto(address);
  await allSaved(guest);

  await owner.getByRole("button", { name: "Invite" }).click();
  const dialog = owner.getByRole("dialog", { name: "Invite to this sheet" });
  await dialog.getByRole("button", { name: "Revoke the draw link “Gus”" }).click();
  await dialog.getByRole("button", { name: "Revoke it" }).click();
  await expect(stateLine(guest)).toHaveText("closed: the link was withdrawn");
  await expectAccessibleDayAndNight(guest, "the board that takes nothing more");
  await dialog.getByRole("button", { name: "Close" }).click();

  await line.cut();
  await expect(stateLine(owner)).toHaveText(/^offline/);
  await expectAccessibleDayAndNight(owner, "the board offline");
  await owner.goto("about:blank"); // it would ask for the line for ever
});
