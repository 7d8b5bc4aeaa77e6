/** `npm run dev`: the server from its sources, pages rebuilt as they are edited. */

import { endWithNpm } from "./house/end-with-npm.mjs";
import { requireNode } from "./house/node-version.mjs";
import { ensurePackages } from "./house/packages.mjs";
import { plainly } from "./house/plainly.mjs";
import { addressAsked, requireFreePort, serve } from "./house/serve.mjs";

await plainly(async () => {
  requireNode();
  endWithNpm();
  await requireFreePort(addressAsked());
  await ensurePackages();
  serve(["--import", "tsx", "server/main.ts"], { NODE_ENV: "development" });
});
