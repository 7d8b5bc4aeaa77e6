import { readFileSync } from "node:fs";
import { inRoot } from "./root.mjs";
import { run } from "./run.mjs";
import { hashOf, setStamp, stampIs } from "./stamp.mjs";

/** Installs what package-lock.json lists, unless it is there already. Answers whether it had to. */
export async function ensurePackages() {
  const lock = hashOf(["package-lock.json"]);
  const installed = readLock("node_modules/.package-lock.json");
  if (installed !== null && stampIs("packages", lock)) return false;
  if (!agrees(installed, readLock("package-lock.json"))) {
    console.log("Installing packages …");
    const { code, output } = await run("npm", ["ci", "--no-audit", "--no-fund"]);
    if (code !== 0) throw new Error(`npm ci failed\n${output}`);
  }
  setStamp("packages", lock);
  return true;
}

/**
 * Does npm's own note of what it installed agree with the lock? So it does after someone ran
 * `npm install` by hand.
 *
 * @param {Record<string, { version: string }> | null} installed
 * @param {Record<string, { version: string, optional?: boolean }> | null} lock
 */
export function agrees(installed, lock) {
  if (installed === null || lock === null) return false;
  const entries = Object.entries(lock).filter(([path]) => path !== "");
  const missing = entries.filter(
    ([path, { version, optional }]) =>
      installed[path]?.version !== version && !(optional && installed[path] === undefined),
  );
  return missing.length === 0 && Object.keys(installed).every((path) => path in lock);
}

function readLock(path) {
  try {
    return JSON.parse(readFileSync(inRoot(path), "utf8")).packages;
  } catch {
    return null;
  }
}
