import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import WebSocket from "ws";
import * as Y from "yjs";
import { type DocumentLine, openDocumentLine } from "../../app/_room/document-line";
import { inkStateOf } from "../../app/_room/ink-state";
import type { RunningHub } from "../../server/start-hub";
import { sheetWithPeople, startTestHub, temporaryFolder } from "../support/hub-under-test";
import { paperDrawer, paperStore } from "../support/paper-drawer";

/** The page's own line against a real hub: what it says of the ink must be true at every moment. */
describe("a page's line", () => {
  const folder = temporaryFolder();
  const open: DocumentLine[] = [];
  let hub: RunningHub;

  beforeEach(async () => {
    hub = await startTestHub(folder.path);
  });
  afterEach(async () => {
    for (const line of open.splice(0)) line.close();
    vi.unstubAllGlobals();
    await hub.stop();
  });

  async function page(doc = new Y.Doc()) {
    const { sheet, cookies } = await sheetWithPeople(hub.url);
    const { url } = hub;
    // A browser brings its cookie and origin by itself; here the socket is given them.
    class BrowserSocket extends WebSocket {
      constructor(address: string) {
        super(address, { headers: { cookie: cookies.draw, origin: url } });
      }
    }
    vi.stubGlobal("WebSocket", BrowserSocket);
    const line = openDocumentLine(doc, `${url.replace("http", "ws")}/sync/${sheet}`, "drawing", {
      ...{ client: doc.clientID, present: true, onUnopened: () => undefined },
      ...{ drawer: paperDrawer(paperStore()).drawer, earlier: Promise.resolve([]) },
    });
    open.push(line);
    const strokes = doc.getMap<Uint8Array>("strokes");
    const draw = (id: string) => strokes.set(id, Uint8Array.of(1, 2, 3));
    return { line, doc, draw, strokes };
  }

  const says = (line: DocumentLine) => inkStateOf(line.state.get(), true);

  it("calls ink saved only after the hub has said so", async () => {
    const { line, draw } = await page();
    await vi.waitFor(() => expect(says(line)).toBe("saved"));
    draw("a");
    expect(says(line)).toBe("saving");
    await vi.waitFor(() => expect(says(line)).toBe("saved"));
    const { sent, saved } = line.state.get();
    expect(sent).toBe(2);
    expect(saved).toBe(2);
  });

  it("hands over what was drawn before the line opened, and is not refused for it", async () => {
    const doc = new Y.Doc();
    doc.getMap("strokes").set("early", Uint8Array.of(1));
    const { line, draw } = await page(doc);
    // Drawn in the moment when the socket is open and the hub has not asked yet.
    const saidOfIt = await new Promise<string>((resolve) => {
      const stop = line.state.subscribe(() => {
        if (!line.state.get().connected) return;
        stop();
        draw("between");
        resolve(says(line)); // at once: the hub's question may follow on its heels
      });
    });
    expect(saidOfIt).toBe("not-saved");
    await vi.waitFor(() => expect(says(line)).toBe("saved"));
    expect(line.state.get().refused).toBeNull();
    expect(line.state.get().sent).toBe(1); // all of it in the one answer
  });

  it("says not saved while the hub is gone, and saved again when it is back", async () => {
    const { line, draw } = await page();
    await vi.waitFor(() => expect(says(line)).toBe("saved"));
    const { port } = hub;
    await hub.stop();
    await vi.waitFor(() => expect(says(line)).toBe("offline"));
    draw("alone");
    expect(says(line)).toBe("not-saved");
    hub = await startTestHub(folder.path, { port });
    await vi.waitFor(() => expect(says(line)).toBe("saved"), { timeout: 15_000 });
  });
});
