import { join } from "node:path";
import Database from "libsql";
import { packStroke } from "../../lib/ink";
import type { SheetFile } from "../../lib/sheet";
import { STORE_LIMITS } from "../../shared/limits";
import { openPage } from "../support/hub-client";
import { ask, createSheet, enter } from "../support/hub-under-test";
import { expect, ownBoard, test } from "../support/journey";
import { layLine } from "../support/journey-line";
import { across, onScreen, paperAt } from "../support/journey-papers";
import { allSaved, exportSheet, settled, stateLine } from "../support/journey-sheet";
import { takePen } from "../support/pen";
import { strokeOf } from "../support/strokes";

const board = ownBoard();

/** What a browser says on its console of a line that is down, and of a door that is shut. */
const EXPECTED = /WebSocket connection to|net::ERR_|status of 404/;

const strokesOf = (file: SheetFile) => file.panels.flatMap(({ ink }) => ink.side);

test("a page that was away for a day comes back right", async ({ newcomer }) => {
  const { url, dataDir } = board;
  const { sheet, links } = await createSheet(url, { title: "A day away" });
  const line = await layLine(url);
  const page = await newcomer({ mayComplain: EXPECTED });
  await page.goto(`${line.url}/sheet/${sheet}#${links.draw}`);
  await settled(page);
  const pen = await takePen(page);
  await pen.draw(await onScreen(paperAt(page, 1), across(300)));
  await allSaved(page);
  await line.cut();
  await expect(stateLine(page)).toHaveText(/^offline/);
  for (const y of [500, 700]) await pen.draw(await onScreen(paperAt(page, 1), across(y)));
  await expect(stateLine(page)).toHaveText("offline, kept on this machine");
  await page.goto("about:blank"); // it is closed for the night, asked or not

  const many = STORE_LIMITS.compactRows + 50;
  await test.step("others draw so much that the old rows are tidied away", async () => {
    const other = await openPage({ url, sheet, cookie: await enter(url, sheet, links.draw) });
    const panel = [...other.doc.getMap("panels").keys()].at(-1) ?? "";
    for (let n = 0; n < many; n++) {
      const stroke = strokeOf([[n % 700, 200, 0.5]], { panel });
      other.draw(`other${String(n).padStart(4, "0")}`, packStroke(stroke));
    }
    await other.allSaved();
    await other.close();
  });
  await test.step("the link draws no more, then draws again, then ends", async () => {
    const cookie = await enter(url, sheet, links.owner);
    const path = `/api/sheets/${sheet}/links`;
    const { body } = await ask(url, path, { cookie });
    const all = (body as { links: { link: string; role: string }[] }).links;
    const link = all.find(({ role }) => role === "draw")?.link ?? "";
    for (const role of ["critique", "draw"]) {
      const asked = { method: "PATCH", cookie, body: { role } };
      expect((await ask(url, `${path}/${link}`, asked)).status).toBe(204);
    }
    await board.restart("SIGTERM", (folder) => {
      const db = new Database(join(folder, "heelstrip.db"));
      db.prepare("update links set expires_at = 1 where id = ?").run([link]);
      db.close();
    });
  });
  await line.mend();

  await test.step("the ended link is told of, and what lies here is not lost", async () => {
    await page.goto(`${line.url}/sheet/${sheet}`);
    await expect(page.getByRole("heading", { name: /no way into the sheet/ })).toBeVisible();
    const kept = page.getByRole("region", { name: "What lies in this browser" });
    await expect(kept).toContainText("never reached the server: 2 strokes.");
  });
  await test.step("with another link both days' ink is there, once", async () => {
    await page.goto(`${line.url}/sheet/${sheet}#${links.owner}`);
    await allSaved(page);
    expect(snapOf(dataDir, sheet)).toBeGreaterThan(0); // the rows it knew are gone
    const ids = strokesOf((await exportSheet(page)).file).map(({ id }) => id);
    expect(ids).toHaveLength(many + 3);
    expect(new Set(ids).size).toBe(many + 3);
    await board.restart("SIGKILL");
    await page.reload();
    await allSaved(page);
    expect(strokesOf((await exportSheet(page)).file)).toHaveLength(many + 3);
  });
  await line.cut();
});

/** Up to which update the drawing's newest snapshot goes. */
function snapOf(dataDir: string, sheet: string): number {
  const db = new Database(join(dataDir, "heelstrip.db"), { readonly: true });
  const row = db.prepare("select snap from documents where sheet_id = ? and name = 'drawing'");
  const { snap } = row.get([sheet]) as { snap: number };
  db.close();
  return snap;
}
