import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { type Migrations, migrate } from "../../lib/sheet";
import type { RunningHub } from "../../server/start-hub";
import { CLOSE } from "../../shared/close-code";
import { DOCUMENTS, type DocumentName } from "../../shared/document-name";
import { type HubClient, openPage } from "../support/hub-client";
import { createSheet, enter, startTestHub, temporaryFolder } from "../support/hub-under-test";

describe("a stored sheet of another schema", () => {
  let folder: ReturnType<typeof temporaryFolder>;
  let running: RunningHub | null = null;
  let sheet: string;
  let cookie: string;

  beforeEach(async () => {
    folder = temporaryFolder();
    const { url } = await start();
    const created = await createSheet(url, { title: "Kept" });
    sheet = created.sheet;
    cookie = await enter(url, sheet, created.links.owner);
  });
  afterEach(async () => {
    await running?.stop();
    running = null;
    folder.remove();
  });

  /** A server over the same folder, in place of the one that ran. */
  async function start(migrations?: Migrations): Promise<RunningHub> {
    await running?.stop();
    running = await startTestHub(folder.path, {
      ...(migrations && { prepareDocument: (name, doc) => migrate(doc, name, migrations) }),
    });
    return running;
  }

  const open = (document: DocumentName = "drawing"): Promise<HubClient> => {
    if (running === null) throw new Error("a server runs");
    return openPage({ url: running.url, sheet, cookie, document });
  };
  const head = ({ doc }: HubClient) => doc.getMap("sheet").toJSON();

  it.each(DOCUMENTS)("shuts the door for good where the %s is newer", async (document) => {
    const page = await open(document);
    page.doc.getMap("sheet").set("schema", 99);
    await page.allSaved();
    await start();
    const again = await open(document);
    expect(again.closed).toBe(CLOSE.newerVersion);
    expect(again.heard).toEqual([]); // nothing of it leaves the hub
    expect(running?.hub.figures().rooms).toEqual([]);
  });

  it("is migrated once, before anyone sees it, and stored", async () => {
    const runs: string[] = [];
    const step = (kind: string) => () => runs.push(kind);
    const migrations: Migrations = {
      to: 2,
      steps: [
        {
          from: 1,
          drawing: (doc) => {
            runs.push("drawing");
            doc.getMap("sheet").set("shot", "sq040");
          },
          critique: step("critique"),
        },
      ],
    };
    await start(migrations);
    expect(head(await open())).toMatchObject({ schema: 2, shot: "sq040", title: "Kept" });
    await start(migrations);
    expect(head(await open())).toMatchObject({ schema: 2, shot: "sq040" });
    expect(runs).toEqual(["drawing"]);
    expect(head(await open("critique"))).toEqual({ schema: 2 });
    expect(runs).toEqual(["drawing", "critique"]);
  });
});
