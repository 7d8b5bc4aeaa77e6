import { defineConfig } from "vitest/config";

/**
 * Three projects: what is pure and quick, what starts real servers, and what looks at the house
 * itself (borders between folders, the examples in docstrings). Journeys belong to Playwright.
 */
export default defineConfig({
  test: {
    coverage: { provider: "v8", include: ["lib/**"], reporter: ["text-summary", "json-summary"] },
    projects: [
      {
        test: {
          name: "lib",
          include: ["tests/{lib,shared,bin,app}/**/*.test.ts"],
          setupFiles: "tests/support/property-seed.ts",
          environment: "node",
          isolate: false, // nothing here keeps a state that a test could spoil; half the time went into loading
          testTimeout: 30_000, // the invariants try hundreds of walks; a busy machine takes its time
        },
      },
      {
        test: {
          name: "server",
          include: ["tests/server/**/*.test.ts"],
          environment: "node",
          globalSetup: "tests/support/programs.ts",
          testTimeout: 180_000, // servers are killed and started anew, many times over: half a minute if busy
          hookTimeout: 60_000,
          isolate: false,
          maxWorkers: 2,
        },
      },
      {
        test: {
          name: "house",
          include: ["tests/{borders,scripts}/**/*.test.ts", "tests/examples.test.ts"],
          environment: "node",
          testTimeout: 60_000,
        },
      },
    ],
  },
});
