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

interface WorkerFixtures {
  /** Runs as long as the worker: to start one takes longer than many a journey. */
  readonly workersBoard: Board;
}

/** All journeys come from one address, and each makes sheets of its own. */
const BOUNDLESS = { ADDRESS_SHEETS: "100000", ADDRESS_REQUESTS: "1000000" } as const;

/**
 * A journey. Every page in it is watched: a request to a foreign address, an error on the console (a
 * breach of the page's content policy is one) or an exception ends the journey as failed.
 */
export const test = base.extend<JourneyFixtures, WorkerFixtures>({
  workersBoard: [
    // biome-ignore lint/correctness/noEmptyPattern: Playwright reads from it that nothing is asked for
    async ({}, use) => {
      const board = await startBoard(BOUNDLESS);
      await use(board);
      await board.stop();
    },
    { scope: "worker" },
  ],
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

/** The board that a spec file's journeys go to: running before the first, and after the last. */
export interface OwnBoard {
  readonly dataDir: string;
  readonly url: string;
  readonly restart: Board["restart"];
}

/** No other journey is under way on it at the same time; sheets of earlier ones may lie there. */
export function ownBoard(): OwnBoard {
  let board: Board | null = null;
  const running = () => {
    if (board === null) throw new Error("the board runs from a journey's beginning to its end");
    return board;
  };
  test.beforeAll(({ workersBoard }) => {
    board = workersBoard;
  });
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
