import { execFileSync } from "node:child_process";
import { readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";

/**
 * Keeps a second process out of a data folder. The file names the process and when it started, so
 * that what a killed one left behind is told from one that lives, even if its number was given out
 * again.
 *
 * Errors:  Error naming the process that has the folder
 */
export function lockFolder(folder: string): { release(): void } {
  const file = join(folder, "heelstrip.lock");
  const mine = named(process.pid);
  if (!placed(file, mine)) {
    clearStale(file);
    if (!placed(file, mine)) throw new Error(inUse(folder, readIfThere(file)));
  }
  return {
    release() {
      if (readIfThere(file) === mine) rmSync(file, { force: true });
    },
  };
}

/** Creates the file, unless it is there. */
function placed(file: string, text: string): boolean {
  try {
    writeFileSync(file, text, { flag: "wx" });
    return true;
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === "EEXIST") return false;
    throw error;
  }
}

/** Moves a dead process's lock out of the way; one that another starter has just replaced goes back. */
function clearStale(file: string): void {
  const seen = readIfThere(file);
  if (seen === null || isAlive(seen)) return;
  const aside = `${file}.${process.pid}`;
  renameSync(file, aside);
  const taken = readIfThere(aside);
  if (taken !== null && taken !== seen) placed(file, taken);
  rmSync(aside, { force: true });
}

function isAlive(text: string): boolean {
  const pid = Number(/^process (\d+)/.exec(text)?.[1]);
  return Number.isInteger(pid) && isRunning(pid) && text === named(pid);
}

/** Asked of the system itself, for where it does not tell when a process started. */
function isRunning(pid: number): boolean {
  try {
    process.kill(pid, 0); // sends nothing
    return true;
  } catch (error) {
    return (error as NodeJS.ErrnoException).code !== "ESRCH"; // another's process is one, too
  }
}

function named(pid: number): string {
  return `process ${pid} started ${startOf(pid) ?? "at no known time"}\n`;
}

/** When a process started, in whatever words the system has for it; null if there is none. */
function startOf(pid: number): string | null {
  try {
    // Field 22 of stat, counted after the name, which may hold spaces: start in ticks since boot.
    const stat = readFileSync(`/proc/${pid}/stat`, "utf8");
    return stat.slice(stat.lastIndexOf(")") + 2).split(" ")[19] ?? null;
  } catch {
    return startByPs(pid);
  }
}

function startByPs(pid: number): string | null {
  try {
    return execFileSync("ps", ["-o", "lstart=", "-p", String(pid)], { encoding: "utf8" }).trim();
  } catch {
    return null;
  }
}

function readIfThere(file: string): string | null {
  try {
    return readFileSync(file, "utf8");
  } catch {
    return null;
  }
}

function inUse(folder: string, holder: string | null): string {
  const who = holder === null ? "another process" : holder.trim();
  return `the data folder ${folder} is in use by ${who}; stop it, or set DATA_DIR to another folder`;
}
