import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, afterEach, describe, expect, it, vi } from "vitest";
import { playwrightTally, vitestTally } from "../../scripts/house/tally.mjs";
import { closeWith } from "../../scripts/house/verdict.mjs";

const folder = mkdtempSync(join(tmpdir(), "tally-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

function report(value: unknown): string {
  const path = join(folder, "report.json");
  writeFileSync(path, JSON.stringify(value));
  return path;
}

describe("counting tests", () => {
  it("counts a test file that could not be read in as one failed", () => {
    const path = report({
      ...{ numPassedTests: 3, numFailedTests: 1, numPendingTests: 2, numTodoTests: 1 },
      testResults: [
        { status: "failed", assertionResults: [{ status: "failed" }] },
        { status: "failed", assertionResults: [] },
        { status: "passed", assertionResults: [{ status: "passed" }] },
      ],
    });
    expect(vitestTally(path)).toEqual({ passed: 3, failed: 2, skipped: 3 });
  });

  it("counts an error outside every journey as one failed", () => {
    const path = report({
      stats: { expected: 4, unexpected: 1, flaky: 0, skipped: 1 },
      errors: [{ message: "no such file" }],
    });
    expect(playwrightTally(path)).toEqual({ passed: 4, failed: 2, skipped: 1 });
  });

  it("counts nothing where no report was written", () => {
    const nothing = { passed: 0, failed: 0, skipped: 0 };
    expect(vitestTally(join(folder, "none.json"))).toEqual(nothing);
    expect(playwrightTally(join(folder, "none.json"))).toEqual(nothing);
  });
});

describe("the closing line", () => {
  afterEach(() => {
    vi.restoreAllMocks();
    process.exitCode = undefined;
  });

  const close = (total: { passed: number; failed: number; skipped: number }) => {
    const print = vi.spyOn(console, "log").mockImplementation(() => {});
    closeWith(total);
    return { line: print.mock.calls.flat().join("\n"), exitCode: process.exitCode };
  };

  it("is plain, and ends well when all passed", () => {
    const closed = close({ passed: 12, failed: 0, skipped: 1 });
    expect(closed).toEqual({ line: "12 passed, 0 failed, 1 skipped", exitCode: 0 });
  });

  it("ends badly when one failed", () => {
    const closed = close({ passed: 12, failed: 1, skipped: 0 });
    expect(closed).toEqual({ line: "12 passed, 1 failed, 0 skipped", exitCode: 1 });
  });

  it("is not printed when no test ran", () => {
    expect(() => close({ passed: 0, failed: 0, skipped: 0 })).toThrow("no test ran");
  });
});
