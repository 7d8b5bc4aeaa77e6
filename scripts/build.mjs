/** `npm run build`: pages, server and command line, if anything changed; `-- --force` in any case. */
import { ensureBuilt } from "./house/built.mjs";
import { requireNode } from "./house/node-version.mjs";
import { ensurePackages } from "./house/packages.mjs";
import { plainly } from "./house/plainly.mjs";

await plainly(async () => {
  requireNode();
  await ensurePackages();
  const built = await ensureBuilt({ force: process.argv.includes("--force") });
  console.log(built ? "Built." : "Nothing changed since the last build.");
});
