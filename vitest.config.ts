import { defineConfig } from "vitest/config";

/** Two projects: what is pure and quick, and what starts real servers. Journeys belong to Playwright. */
export default defineConfig({
  test: {
    projects: [
      {
        test: {
          name: "lib",
          include: ["tests/{lib,shared,bin,app}/**/*.test.ts", "tests/examples.test.ts"],
          environment: "node",
        },
      },
      {
        test: {
          name: "server",
          include: ["tests/server/**/*.test.ts"],
          environment: "node",
          testTimeout: 60_000,
          hookTimeout: 60_000,
          fileParallelism: false,
        },
      },
    ],
  },
});
