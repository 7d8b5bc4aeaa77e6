import { readFileSync } from "node:fs";

export const NOTHING = Object.freeze({ passed: 0, failed: 0, skipped: 0 });

/** Counts the tests in Vitest's JSON report. A file that could not even be read in is one failed. */
export function vitestTally(path) {
  const report = readReport(path);
  if (report === null) return { ...NOTHING };
  const broken = report.testResults.filter(
    (file) => file.status === "failed" && file.assertionResults.every((t) => t.status !== "failed"),
  );
  return {
    passed: report.numPassedTests,
    failed: report.numFailedTests + broken.length,
    skipped: report.numPendingTests + report.numTodoTests,
  };
}

/** Counts the tests in Playwright's JSON report. An error outside every test is one failed. */
export function playwrightTally(path) {
  const report = readReport(path);
  if (report === null) return { ...NOTHING };
  const { expected, unexpected, flaky, skipped } = report.stats;
  return { passed: expected, failed: unexpected + flaky + report.errors.length, skipped };
}

function readReport(path) {
  try {
    return JSON.parse(readFileSync(path, "utf8"));
  } catch {
    return null; // the run ended before it could write one; its exit code says so
  }
}
