/** `npm run soak`: long proofs that are too slow for every day. A number chooses how many throws; 200 unless said. */
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
