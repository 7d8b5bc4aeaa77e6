import { defineConfig } from "@playwright/test";
import { CHROMIUM_FLAGS, findChromium } from "./scripts/house/chromium.mjs";

const chromium = findChromium();

/** Journeys start their own board (tests/support/board-server), so nothing is shared but the build. */
export default defineConfig({
  testDir: "tests/journeys",
  testMatch: "**/*.spec.ts",
  outputDir: "test-results/journeys",
  fullyParallel: false,
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
        trace: "retain-on-failure",
        launchOptions: {
          args: CHROMIUM_FLAGS,
          ...(chromium === undefined ? {} : { executablePath: chromium }),
        },
      },
    },
  ],
});
