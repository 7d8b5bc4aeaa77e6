import {
  closeSync,
  copyFileSync,
  existsSync,
  fsyncSync,
  linkSync,
  openSync,
  rmSync,
} from "node:fs";
import { dirname } from "node:path";

/** What SQLite keeps beside a database that is open, or was not closed. */
const BESIDE = ["-wal", "-shm"];

/** Written through to the disk: the file, and its name in the folder. */
export function syncToDisk(file: string): void {
  for (const path of [file, dirname(file)]) {
    const handle = openSync(path, "r");
    try {
      fsyncSync(handle);
    } finally {
      closeSync(handle);
    }
  }
}

/** A database and its log, if it was not closed. */
export function copyDatabase(from: string, to: string): void {
  removeDatabase(to);
  copyFileSync(from, to);
  if (existsSync(`${from}-wal`)) copyFileSync(`${from}-wal`, `${to}-wal`);
}

export function removeDatabase(file: string): void {
  for (const path of [file, ...BESIDE.map((end) => file + end)]) rmSync(path, { force: true });
}

/**
 * A second name for a database, so that the first can be given to another: at no moment is there none.
 * What lay beside it goes with it. Where the disk knows no second names it is a copy.
 */
export function keepAside(file: string, aside: string): void {
  for (const end of ["", ...BESIDE]) {
    if (!existsSync(file + end)) continue;
    if (existsSync(aside + end)) throw new Error(`${aside + end} is there already, and stays`);
    try {
      linkSync(file + end, aside + end);
    } catch {
      copyFileSync(file + end, aside + end);
    }
  }
  syncToDisk(aside);
  for (const end of BESIDE) rmSync(file + end, { force: true });
}

/** A time for the name of a file: no colons, and in order when names are. */
export function timeInName(at: number): string {
  return new Date(at).toISOString().slice(0, 19).replaceAll(":", "-");
}
