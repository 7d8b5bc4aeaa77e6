import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { drawStroke, readSheet, SCHEMA } from "../../lib/sheet";
import type { RunningHub } from "../../server/start-hub";
import { asReadThen, databaseOfThen } from "../support/first-path";
import { openPage } from "../support/hub-client";
import { enter, startTestHub, temporaryFolder } from "../support/hub-under-test";
import { strokeOf } from "../support/strokes";

const { sheetId, owner, sheet } = asReadThen();

describe("a data folder of the first finished path", () => {
  let folder: ReturnType<typeof temporaryFolder>;
  let running: RunningHub;

  beforeEach(async () => {
    folder = temporaryFolder();
    writeFileSync(join(folder.path, "heelstrip.db"), databaseOfThen());
    running = await startTestHub(folder.path);
  });
  afterEach(async () => {
    await running.stop();
    folder.remove();
  });

  /** A page that comes in by the link that was given out then. */
  const comeIn = async (document: "drawing" | "critique" = "drawing") => {
    const cookie = await enter(running.url, sheetId, owner);
    return openPage({ url: running.url, sheet: sheetId, cookie, document });
  };

  it("is opened by its old link, and every panel, mark and stroke is there", async () => {
    const page = await comeIn();
    expect(readSheet(page.doc)).toMatchObject(sheet);
    expect(page.hello?.role).toBe("owner");
    const critique = await comeIn("critique");
    expect(critique.closed).toBeNull();
    expect(critique.doc.getMap("sheet").get("schema")).toBe(SCHEMA);
  });

  it("takes new ink, and keeps it beside the old over another start", async () => {
    const page = await comeIn();
    const panel = sheet.panels[0]?.id ?? "";
    drawStroke(page.doc, "newInk01", strokeOf([[9, 9, 0.5]], { panel, z: 99 }));
    await page.allSaved();
    await running.stop();
    running = await startTestHub(folder.path);
    const now = readSheet((await comeIn()).doc);
    expect(now.panels[0]?.ink.side.at(-1)?.id).toBe("newInk01");
    expect(now.panels.slice(1)).toMatchObject(sheet.panels.slice(1));
  });
});
