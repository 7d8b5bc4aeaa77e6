import { expect, ownBoard, test } from "../support/journey";
import { layLine } from "../support/journey-line";
import { across, inkOn, onScreen, paperAt } from "../support/journey-papers";
import { allSaved, exportSheet, startWalk, stateLine } from "../support/journey-sheet";
import { takePen } from "../support/pen";

const board = ownBoard();

/** What a browser says on its console of a line that is down. */
const LINE_DOWN =
  /WebSocket connection to|net::ERR_(CONNECTION|EMPTY_RESPONSE|SOCKET_NOT_CONNECTED)/;
const BACK_MS = 20_000; // the page tries again after a few seconds at most

test("ink drawn while the line is down is called unsaved until it is saved", async ({
  newcomer,
}) => {
  const line = await layLine(board.url);
  const page = await newcomer({ mayComplain: LINE_DOWN });
  await startWalk(page, line.url, "Cut off");
  const paper = paperAt(page, 1);
  const pen = await takePen(page);

  await line.cut();
  await expect(stateLine(page)).toHaveText("offline, all ink so far is saved");
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
