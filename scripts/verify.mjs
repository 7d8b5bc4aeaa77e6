/** `npm run verify`: installs what is missing, the browser too, and looks at everything. */
import { ensureChromium } from "./house/chromium.mjs";
import { endWithNpm } from "./house/end-with-npm.mjs";
import { requireNode } from "./house/node-version.mjs";
import { ensurePackages } from "./house/packages.mjs";
import { plainly } from "./house/plainly.mjs";
import { ALL } from "./house/steps.mjs";
import { take } from "./house/take.mjs";
import { closeWith } from "./house/verdict.mjs";

await plainly(async () => {
  requireNode();
  endWithNpm();
  await ensurePackages();
  await ensureChromium();
  closeWith(await take(ALL));
});
