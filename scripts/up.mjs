/** `npm run up`: installs what is missing, builds if anything changed, starts the board. */
import { BOARD_FLAGS } from "./house/board-flags.mjs";
import { ensureBuilt } from "./house/built.mjs";
import { endWithNpm } from "./house/end-with-npm.mjs";
import { requireNode } from "./house/node-version.mjs";
import { ensurePackages } from "./house/packages.mjs";
import { plainly } from "./house/plainly.mjs";
import { addressAsked, requireFreePort, serve } from "./house/serve.mjs";

await plainly(async () => {
  requireNode();
  endWithNpm();
  await requireFreePort(addressAsked()); // before the long part
  await ensurePackages();
  await ensureBuilt();
  serve([...BOARD_FLAGS, "dist/server.mjs"], { NODE_ENV: "production" });
});
