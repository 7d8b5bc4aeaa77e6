/** `npm run check`: everything but the build and the browser. */

import { endWithNpm } from "./house/end-with-npm.mjs";
import { requireNode } from "./house/node-version.mjs";
import { ensurePackages } from "./house/packages.mjs";
import { plainly } from "./house/plainly.mjs";
import { QUICK } from "./house/steps.mjs";
import { take } from "./house/take.mjs";
import { closeWith } from "./house/verdict.mjs";

await plainly(async () => {
  requireNode();
  endWithNpm();
  await ensurePackages();
  closeWith(await take(QUICK));
});
