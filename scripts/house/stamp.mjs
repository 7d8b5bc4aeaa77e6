import { createHash } from "node:crypto";
import { mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { inRoot, ROOT } from "./root.mjs";

/**
 * One hash over the names and contents of files and folders in the checkout. A path that is not
 * there counts as absent, so that deleting a file changes the hash as well.
 */
export function hashOf(paths) {
  const hash = createHash("sha256");
  for (const path of paths.flatMap(filesUnder).sort()) {
    hash
      .update(`${path}\0`)
      .update(readFileSync(join(ROOT, path)))
      .update("\0");
  }
  return hash.digest("hex");
}

/** True when the stamp of that name was last set to this hash. */
export function stampIs(name, hash) {
  try {
    return readFileSync(inRoot(".stamps", name), "utf8") === hash;
  } catch {
    return false; // never set: the work has not been done here yet
  }
}

export function setStamp(name, hash) {
  mkdirSync(inRoot(".stamps"), { recursive: true });
  writeFileSync(inRoot(".stamps", name), hash);
}

function filesUnder(path) {
  const stats = statSync(join(ROOT, path), { throwIfNoEntry: false });
  if (stats === undefined) return [];
  if (!stats.isDirectory()) return [path];
  return readdirSync(join(ROOT, path)).flatMap((name) => filesUnder(`${path}/${name}`));
}
