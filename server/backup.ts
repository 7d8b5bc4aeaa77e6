import { resolve } from "node:path";
import { readEnv } from "./env";
import { backUp } from "./store/back-up";

const USAGE = "usage: npm run backup [-- FILE or FOLDER]";

/** The command: 0 when a backup was made and found sound, 1 when not, 2 for a wrong call. */
async function main(): Promise<number> {
  const [to, ...more] = process.argv.slice(2);
  if (more.length > 0 || to?.startsWith("-")) {
    console.error(USAGE);
    return 2;
  }
  const { dataDir } = readEnv(process.env);
  const from = process.env.INIT_CWD ?? process.cwd(); // where npm was called, not where it runs us
  const at = Date.now();
  const { file, bytes, found } = await backUp({
    ...{ dataDir, at },
    to: to === undefined ? null : resolve(from, to),
  });
  const size = `${(bytes / 1024 / 1024).toFixed(1)} MiB`;
  const held = found === null ? "its pages are sound" : `${found.sheets} sheets, all of them sound`;
  console.log(`Backed up to ${file}: ${size}, ${held}.`);
  if (found !== null && found.damagedSnapshots > 0) {
    console.error(`${found.damagedSnapshots} snapshots are damaged; older ones stand in for them.`);
  }
  return 0;
}

process.exitCode = await main().catch((error: unknown) => {
  console.error(`No backup was made: ${error instanceof Error ? error.message : error}`);
  return 1;
});
