/** `npm run backup`: a sound copy of the database while people draw; a file or folder may be named for it. */
import { requireNode } from "./house/node-version.mjs";
import { ensurePackages } from "./house/packages.mjs";
import { plainly } from "./house/plainly.mjs";
import { serve } from "./house/serve.mjs";

await plainly(async () => {
  requireNode();
  await ensurePackages();
  serve(["--import", "tsx", "server/backup.ts", ...process.argv.slice(2)], {});
});
