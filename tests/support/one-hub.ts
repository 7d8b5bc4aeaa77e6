import { afterAll, beforeAll } from "vitest";
import type { RunningHub } from "../../server/start-hub";
import { startTestHub, temporaryFolder } from "./hub-under-test";

/** One hub for all tests of a block: started before the first of them, gone after the last. */
export interface OneHub {
  readonly url: string;
  /** Its data folder. */
  readonly folder: string;
  /** Another one over the same folder. */
  restart(): Promise<void>;
}

/** Called within the block it is for. */
export function oneHub(): OneHub {
  const folder = temporaryFolder();
  let running: RunningHub | null = null;
  const hub = () => {
    if (running === null) throw new Error("the hub runs from the first test to the last");
    return running;
  };
  beforeAll(async () => {
    running = await startTestHub(folder.path);
  });
  afterAll(async () => {
    await running?.stop();
    folder.remove();
  });
  return {
    folder: folder.path,
    get url() {
      return hub().url;
    },
    async restart() {
      await hub().stop();
      running = await startTestHub(folder.path);
    },
  };
}
