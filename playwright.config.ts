import { defineConfig } from "@playwright/test";
import { CHROMIUM_FLAGS, findChromium } from "./scripts/house/chromium.mjs";

const chromium = findChromium();

/**
 * Each worker has a board of its own (tests/support/journey), so nothing is shared but the build. What a
 * failed journey saw step by step is kept with `TRACE=1` alone: it takes as much of a machine as the
 * journeys themselves. Without it there is a picture of the screen where it failed.
 */
export default defineConfig({
  testDir: "tests/journeys",
  testMatch: "**/*.spec.ts",
  outputDir: "test-results/journeys",
  fullyParallel: true, // no file waits as the last, with one worker idle
  workers: 2,
  retries: 0, // a journey that passes the second time has a fault
  // Steps wait for what they look for: only a step that never comes should meet these.
  timeout: 180_000,
  expect: { timeout: 20_000 },
  // Stored pictures are taken by `npm run pictures` alone: a missing one is a failure, not a new one.
  updateSnapshots: "none",
  snapshotPathTemplate: "{testDir}/pictures/{arg}{ext}",
  forbidOnly: process.env.CI !== undefined,
  reporter: "list",
  projects: [
    {
      name: "journeys",
      use: {
        browserName: "chromium",
        viewport: { width: 1440, height: 900 },
        screenshot: "only-on-failure",
        trace: process.env.TRACE === undefined ? "off" : "retain-on-failure",
        launchOptions: {
          args: CHROMIUM_FLAGS,
          ...(chromium === undefined ? {} : { executablePath: chromium }),
        },
      },
    },
  ],
});
