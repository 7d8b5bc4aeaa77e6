import { type BrowserContextOptions, test as base, expect, type Page } from "@playwright/test";
import { type Board, startBoard } from "./board-server";

export interface NewcomerOptions extends BrowserContextOptions {
  /** What the browser's console may complain of on this way: a refusal that the journey asks for. */
  readonly mayComplain?: RegExp;
}

/** How long a hand waits for something to press before it gives up. */
const PATIENCE_MS = 30_000; // a busy machine answers late; one that never does is still found

export interface JourneyFixtures {
  /** A person with a browser of their own: own storage, own grants. */
  readonly newcomer: (options?: NewcomerOptions) => Promise<Page>;
}

/**
 * A journey. Every page in it is watched: a request to a foreign address, an error on the console (a
 * breach of the page's content policy is one) or an exception ends the journey as failed.
 */
export const test = base.extend<JourneyFixtures>({
  newcomer: async ({ browser }, use) => {
    const faults: string[] = [];
    const leave: (() => Promise<void>)[] = [];
    await use(async ({ mayComplain, ...options } = {}) => {
      const context = await browser.newContext(options);
      leave.push(() => context.close());
      const page = await context.newPage();
      page.setDefaultTimeout(PATIENCE_MS);
      watch(page, faults, mayComplain);
      return page;
    });
    await Promise.all(leave.map((close) => close()));
    expect(faults, "what went wrong beside the journey").toEqual([]);
  },
});

export { expect };

/** The board of a spec file: started before its first journey, stopped after its last. */
export interface OwnBoard {
  readonly dataDir: string;
  readonly url: string;
  readonly restart: Board["restart"];
}

export function ownBoard(): OwnBoard {
  let board: Board | null = null;
  const running = () => {
    if (board === null) throw new Error("the board runs from a journey's beginning to its end");
    return board;
  };
  test.beforeAll(async () => {
    board = await startBoard();
  });
  test.afterAll(() => running().stop());
  return {
    get dataDir() {
      return running().dataDir;
    },
    get url() {
      return running().url;
    },
    restart: (...how) => running().restart(...how),
  };
}

/** Neither leaves the page. */
const INSIDE = /^(data|blob):/;

function watch(page: Page, faults: string[], mayComplain: RegExp | undefined): void {
  const note = (fault: string) => {
    if (mayComplain === undefined || !mayComplain.test(fault)) faults.push(fault);
  };
  let home: string | null = null;
  page.on("request", (request) => {
    const address = request.url();
    home ??= new URL(address).origin;
    if (INSIDE.test(address) || new URL(address).origin === home) return;
    faults.push(`a request to ${address} from ${home}`);
  });
  page.on("websocket", (socket) => {
    const { host } = new URL(socket.url());
    if (home !== null && host !== new URL(home).host) faults.push(`a line to ${socket.url()}`);
  });
  page.on("console", (message) => {
    if (message.type() === "error") note(`console: ${message.text()} (${message.location().url})`);
  });
  page.on("pageerror", (error) => note(`exception: ${error.message}`));
}
