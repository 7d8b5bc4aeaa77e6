import { mkdirSync, rmSync } from "node:fs";
import { ensureBuilt } from "./built.mjs";
import { inRoot } from "./root.mjs";
import { run, runTool } from "./run.mjs";
import { playwrightTally, vitestTally } from "./tally.mjs";
import { weigh } from "./weight.mjs";

const REPORTS = "test-results/verify";
const NEXT = "next/dist/bin/next";

/** In milliseconds. Ten minutes on two free cores; a busy machine must not turn that into a failure. */
const JOURNEYS_AT_MOST = 40 * 60_000;

/**
 * What is looked at. Each step answers with an exit code, what was said, and, where tests ran, how many: a
 * step that is not a test counts as one failed when it fails. `hands` says how many processors it keeps
 * busy, one unless said; `after` which steps have to be done before it begins.
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

const vitest = (name, projects, more = {}) => ({
  ...{ name, ...more },
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
  after: [TYPES], // both write below .next
  async work() {
    try {
      await ensureBuilt();
      const { passes, told } = weigh();
      return { code: passes ? 0 : 1, output: told };
    } catch (error) {
      return { code: 1, output: String(error.message) };
    }
  },
};

const JOURNEYS = {
  ...{ name: "journeys in Chromium", hands: 2, after: [BUILD] },
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

const HOUSE = vitest("borders and examples", ["house"]);
const LIB = vitest("tests of lib and shared", ["lib"], { hands: 2 });
const SERVER = vitest("tests of the server", ["server"]); // two files at a time, which wait a good deal

/** All but what needs a build or a browser. */
export const QUICK = [TYPES, FORMAT, LIB_TYPES, HOUSE, LIB, SERVER];

export const ALL = [TYPES, FORMAT, LIB_TYPES, HOUSE, LIB, SERVER, BUILD, JOURNEYS];

function freshReport(name) {
  mkdirSync(inRoot(REPORTS), { recursive: true });
  const path = inRoot(REPORTS, name);
  rmSync(path, { force: true }); // an old report must not speak for a run that wrote none
  return path;
}
