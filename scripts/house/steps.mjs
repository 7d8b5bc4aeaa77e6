import { mkdirSync, rmSync } from "node:fs";
import { ensureBuilt } from "./built.mjs";
import { inRoot } from "./root.mjs";
import { run, runTool } from "./run.mjs";
import { NOTHING, playwrightTally, vitestTally } from "./tally.mjs";

const REPORTS = "test-results/verify";
const NEXT = "next/dist/bin/next";

/** In milliseconds. Ten minutes on two free cores; a busy machine must not turn that into a failure. */
const JOURNEYS_AT_MOST = 40 * 60_000;

/**
 * What is looked at, cheapest first. Each step answers with an exit code, what was said, and, where
 * tests ran, how many: a step that is not a test counts as one failed when it fails.
 */
const FORMAT = {
  name: "format and lint",
  work: () => runTool("@biomejs/biome/bin/biome", ["check", "--error-on-warnings", "."]),
};

const TYPES = {
  name: "types",
  async work() {
    // stale ones name pages that are gone
    for (const types of [".next/types", ".next/dev/types"]) {
      rmSync(inRoot(types), { recursive: true, force: true });
    }
    const typegen = await runTool(NEXT, ["typegen"], { env: { NEXT_TELEMETRY_DISABLED: "1" } });
    if (typegen.code !== 0) return typegen;
    return runTool("typescript/bin/tsc", ["-p", "tsconfig.json"]);
  },
};

const LIB_TYPES = {
  name: "types of lib, without a screen",
  work: () => runTool("typescript/bin/tsc", ["-p", "lib/tsconfig.json"]),
};

const vitest = (name, projects) => ({
  name,
  async work() {
    const report = freshReport(`${projects[0]}.json`);
    const ran = await runTool("vitest/vitest.mjs", [
      "run",
      ...projects.flatMap((project) => ["--project", project]),
      ...["--reporter=default", "--reporter=json", `--outputFile.json=${report}`],
    ]);
    return { ...ran, tally: vitestTally(report) };
  },
});

const BUILD = {
  name: "build",
  async work() {
    try {
      await ensureBuilt();
      return { code: 0, output: "" };
    } catch (error) {
      return { code: 1, output: String(error.message) };
    }
  },
};

const JOURNEYS = {
  name: "journeys in Chromium",
  async work() {
    const report = freshReport("journeys.json");
    const ran = await run(
      process.execPath,
      ["node_modules/@playwright/test/cli.js", "test", "--reporter=list,json"],
      { env: { PLAYWRIGHT_JSON_OUTPUT_NAME: report }, timeout: JOURNEYS_AT_MOST },
    );
    return { ...ran, tally: playwrightTally(report) };
  },
};

/** All but what needs a build or a browser. */
export const QUICK = [
  FORMAT,
  TYPES,
  LIB_TYPES,
  vitest("borders and examples", ["house"]),
  vitest("tests of lib and shared", ["lib"]),
  vitest("tests of the server", ["server"]),
];

export const ALL = [...QUICK, BUILD, JOURNEYS];

/** Takes every step, whatever the ones before it answered, so that one run shows all there is. */
export async function take(steps) {
  const total = { ...NOTHING };
  for (const step of steps) {
    process.stdout.write(`· ${step.name} …\n`);
    const started = performance.now();
    const { code, output, tally } = await step.work();
    const seconds = ((performance.now() - started) / 1000).toFixed(1);
    // tests all green and yet a bad exit: something failed outside them
    const beside = code !== 0 && (tally?.failed ?? 0) === 0 ? 1 : 0;
    const bad = code !== 0 || (tally?.failed ?? 0) > 0;
    if (bad) console.log(output.trimEnd());
    console.log(`${bad ? "✗" : "✓"} ${step.name}: ${seconds} s${counted(tally)}`);
    total.passed += tally?.passed ?? 0;
    total.failed += (tally?.failed ?? 0) + beside;
    total.skipped += tally?.skipped ?? 0;
  }
  return total;
}

function counted(tally) {
  if (tally === undefined) return "";
  return ` (${tally.passed} of ${tally.passed + tally.failed + tally.skipped} tests passed)`;
}

function freshReport(name) {
  mkdirSync(inRoot(REPORTS), { recursive: true });
  const path = inRoot(REPORTS, name);
  rmSync(path, { force: true }); // an old report must not speak for a run that wrote none
  return path;
}
