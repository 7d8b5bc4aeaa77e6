import { expect, ownBoard, test } from "../support/journey";
import { BACK_MS, layLine } from "../support/journey-line";
import { across, inkOn, onScreen, paperAt } from "../support/journey-papers";
import { allSaved, exportSheet, startWalk, stateLine } from "../support/journey-sheet";
import { takePen } from "../support/pen";

const board = ownBoard();

/** What a browser says on its console of a line that is down. */
const LINE_DOWN =
  /WebSocket connection to|net::ERR_(CONNECTION|EMPTY_RESPONSE|SOCKET_NOT_CONNECTED)/;

test("ink drawn while the line is down is called unsaved until it is saved", async ({
  newcomer,
}) => {
  const line = await layLine(board.url);
  const page = await newcomer({ mayComplain: LINE_DOWN });
  await startWalk(page, line.url, "Cut off");
  const paper = paperAt(page, 1);
  const pen = await takePen(page);

  await test.step("it explains itself to the hand, to the keyboard and to a screen reader", async () => {
    const why = /^Everything that was drawn here is on the hub's disk\./;
    const told = page.getByRole("banner").getByRole("tooltip");
    await expect(told).toHaveCount(0); // folded away, it is heard all the same
    await expect(stateLine(page)).toHaveAccessibleDescription(why);
    await stateLine(page).hover();
    await expect(told).toHaveText(why);
    await told.hover(); // the hand may go there to read on
    await expect(told).toBeVisible();
    await page.mouse.move(700, 500);
    await expect(told).toHaveCount(0);
    await stateLine(page).focus();
    await expect(told).toHaveText(why);
    await page.keyboard.press("Escape");
    await expect(told).toHaveCount(0);
    await page.keyboard.press("Tab");
  });

  await line.cut();
  await expect(stateLine(page)).toHaveText("offline, all ink so far is saved");
  await expect(stateLine(page)).toHaveAccessibleDescription(/^The line is down\./);
  await pen.draw(await onScreen(paper, across(400)));
  await expect(stateLine(page)).toHaveText("offline, kept on this machine");
  expect(await inkOn(paper)).toBeGreaterThan(20);

  await test.step("leaving is warned about, and staying loses nothing", async () => {
    const warned = page.waitForEvent("dialog");
    await page.close({ runBeforeUnload: true });
    const dialog = await warned;
    expect(dialog.type()).toBe("beforeunload");
    await dialog.dismiss();
    await expect(stateLine(page)).toHaveText("offline, kept on this machine");
  });

  await line.mend();
  await expect(stateLine(page)).toHaveText("all ink saved", { timeout: BACK_MS });
  // It said so: then it must be there even though the server falls over at once.
  await board.restart("SIGKILL");
  await page.reload();
  await allSaved(page);
  await expect.poll(() => inkOn(paper)).toBeGreaterThan(20);

  await test.step("leaving is not warned about when nothing would be lost", async () => {
    await pen.draw(await onScreen(paper, across(900)));
    await allSaved(page);
    const warnings: string[] = [];
    page.on("dialog", (dialog) => void dialog.accept().then(() => warnings.push(dialog.type())));
    await Promise.all([page.waitForEvent("close"), page.close({ runBeforeUnload: true })]);
    expect(warnings).toEqual([]);
  });
  await line.cut();
});

test("a stroke under the pen outlives a server that falls over", async ({ newcomer }) => {
  const page = await newcomer({ mayComplain: LINE_DOWN });
  await startWalk(page, board.url, "Struck down");
  const paper = paperAt(page, 4);
  const pen = await takePen(page);
  await pen.draw(await onScreen(paper, across(300)));
  await allSaved(page);

  const way = await onScreen(paper, across(800));
  const [first] = way;
  if (first !== undefined) await pen.down(first);
  await pen.move(way.slice(1, 13));
  await expect(stateLine(page)).toHaveText("pen down…"); // it is in this tab alone
  await board.restart("SIGKILL");
  await pen.move(way.slice(13));
  await pen.up();
  await expect(stateLine(page)).toHaveText("all ink saved", { timeout: BACK_MS });

  await page.reload();
  await allSaved(page);
  const { file } = await exportSheet(page);
  expect(file.panels.flatMap(({ ink }) => ink.side)).toHaveLength(2);
  await expect.poll(() => inkOn(paper, { top: 700, bottom: 900 })).toBeGreaterThan(20);
});
