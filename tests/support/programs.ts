import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { bundle } from "../../scripts/house/built.mjs";

const ROOT = fileURLToPath(new URL("../..", import.meta.url));
const FOLDER = "test-results/programs";

/** What tests of the server start as processes of their own, and the thread that every hub starts. */
const PROGRAMS: Readonly<Record<string, string>> = {
  main: "server/main.ts",
  "store-worker": "server/store/worker.ts",
  backup: "server/backup.ts",
  restore: "server/restore.ts",
  "compact-and-die": "tests/support/compact-and-die.ts",
};

/**
 * Bundles them once, before the first test file, as the build bundles the server: from its source each
 * start of a hub takes some five times as much of a processor as from its bundle.
 */
export async function setup(): Promise<void> {
  await bundle(PROGRAMS, FOLDER);
  process.env.HEELSTRIP_PROGRAMS = join(ROOT, FOLDER);
  process.env.HEELSTRIP_STORE_THREAD = pathToFileURL(join(ROOT, FOLDER, "store-worker.mjs")).href;
}

/** What Node is to be told to run a module of ours: the bundle, where there is one, else the source. */
export function toRun(file: string): string[] {
  const folder = process.env.HEELSTRIP_PROGRAMS;
  const [name] = Object.entries(PROGRAMS).find(([, from]) => from === file) ?? [];
  if (folder === undefined || name === undefined) return ["--import", "tsx", file];
  return [join(folder, `${name}.mjs`)];
}
