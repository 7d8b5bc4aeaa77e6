import { closeSync, fdatasyncSync, fsyncSync, openSync, writeSync } from "node:fs";
import { join } from "node:path";
import { temporaryFolder } from "../../support/hub-under-test";
import { passed } from "./config";
import { median } from "./round";

const WRITES = 60;
const PAGE = Buffer.alloc(4096, 1); // what an update of a few hundred bytes takes in a log
const PAUSE_MS = 50; // two people who draw, each ten strokes a second

/**
 * The floor of whatever is durable: a page of a file that is long enough already, written and synced. Idle moments
 * lie between, for a disk that is busy anyway answers sooner.
 *
 * Units:   milliseconds, the median
 */
export async function syncMs(): Promise<number> {
  const folder = temporaryFolder();
  const file = openSync(join(folder.path, "floor"), "w");
  try {
    for (let page = 0; page < WRITES; page++) writeSync(file, PAGE);
    fsyncSync(file);
    const times: number[] = [];
    for (let page = 0; page < WRITES; page++) {
      await passed(PAUSE_MS);
      const from = performance.now();
      writeSync(file, PAGE, 0, PAGE.length, page * PAGE.length);
      fdatasyncSync(file);
      times.push(performance.now() - from);
    }
    return median(times);
  } finally {
    closeSync(file);
    folder.remove();
  }
}
