/** `npm run pictures`: takes the stored pictures of the screens anew, on purpose. Look at each of them. */
import { ensureBuilt } from "./house/built.mjs";
import { ensureChromium } from "./house/chromium.mjs";
import { ensurePackages } from "./house/packages.mjs";
import { plainly } from "./house/plainly.mjs";
import { run } from "./house/run.mjs";

const CLI = "node_modules/@playwright/test/cli.js";
const SPEC = "tests/journeys/pictures.spec.ts";

await plainly(async () => {
  await ensurePackages();
  await ensureChromium();
  await ensureBuilt();
  const args = [
    CLI,
    "test",
    SPEC,
    "--update-snapshots=all",
    "--workers=1",
    ...process.argv.slice(2),
  ];
  const { code } = await run(process.execPath, args, { show: true });
  process.exitCode = code;
});
