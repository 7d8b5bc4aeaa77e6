/** `npm run soak`: long proofs that are too slow for every day. Names choose parts, a number how many throws; all and 200 unless said. */
import { endWithNpm } from "./house/end-with-npm.mjs";
import { requireNode } from "./house/node-version.mjs";
import { ensurePackages } from "./house/packages.mjs";
import { plainly } from "./house/plainly.mjs";
import { serve } from "./house/serve.mjs";

await plainly(async () => {
  requireNode();
  endWithNpm();
  await ensurePackages();
  serve(["--import", "tsx", "tests/soak/index.ts", ...process.argv.slice(2)], {});
});
