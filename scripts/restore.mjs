/** `npm run restore -- FILE`: puts a backup in the place of the database, while the board is stopped. */
import { requireNode } from "./house/node-version.mjs";
import { ensurePackages } from "./house/packages.mjs";
import { plainly } from "./house/plainly.mjs";
import { serve } from "./house/serve.mjs";

await plainly(async () => {
  requireNode();
  await ensurePackages();
  serve(["--import", "tsx", "server/restore.ts", ...process.argv.slice(2)], {});
});
