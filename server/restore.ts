import { resolve } from "node:path";
import { readEnv } from "./env";
import { restore } from "./store/restore";

const USAGE = "usage: npm run restore -- FILE";

/** The command: 0 when the backup is in place, 1 when everything is as it was, 2 for a wrong call. */
async function main(): Promise<number> {
  const [file, ...more] = process.argv.slice(2);
  if (file === undefined || more.length > 0 || file.startsWith("-")) {
    console.error(USAGE);
    return 2;
  }
  const { dataDir } = readEnv(process.env);
  const from = resolve(process.env.INIT_CWD ?? process.cwd(), file); // where npm was called
  const { found, aside, missing, unread } = await restore({ dataDir, from, at: Date.now() });
  console.log(`Restored ${found.sheets} sheets from ${from}.`);
  if (aside !== null) {
    console.log(`What was there is kept: npm run restore -- ${aside} brings it back.`);
  }
  if (missing > 0) console.log(`${missing} sheets are only in there: they are not in the backup.`);
  if (unread !== null) {
    console.error(
      `What was there could not be read (${unread}): links that were revoked after the backup are open again.`,
    );
  }
  return 0;
}

process.exitCode = await main().catch((error: unknown) => {
  console.error(`Nothing was restored: ${error instanceof Error ? error.message : error}`);
  return 1;
});
