/** `npm run bench`: side-by-side measurements, printed as a table. Names in any order choose some. */
import { ensureBuilt } from "./house/built.mjs";
import { ensureChromium } from "./house/chromium.mjs";
import { endWithNpm } from "./house/end-with-npm.mjs";
import { requireNode } from "./house/node-version.mjs";
import { ensurePackages } from "./house/packages.mjs";
import { plainly } from "./house/plainly.mjs";
import { serve } from "./house/serve.mjs";

await plainly(async () => {
  requireNode();
  endWithNpm();
  await ensurePackages();
  await ensureChromium();
  await ensureBuilt();
  serve(["--import", "tsx", "tests/bench/index.ts", ...process.argv.slice(2)], {});
});
