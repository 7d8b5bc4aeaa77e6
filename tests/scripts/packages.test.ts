import { describe, expect, it } from "vitest";
import { agrees } from "../../scripts/house/packages.mjs";

const LOCK = {
  "": { version: "0.1.0" },
  "node_modules/yjs": { version: "13.6.33" },
  "node_modules/binary-for-here": { version: "1.0.0", optional: true },
  "node_modules/binary-for-there": { version: "1.0.0", optional: true },
};
const INSTALLED = {
  "node_modules/yjs": { version: "13.6.33" },
  "node_modules/binary-for-here": { version: "1.0.0" },
};

describe("what is installed", () => {
  it("agrees with the lock, another machine's binaries apart", () => {
    expect(agrees(INSTALLED, LOCK)).toBe(true);
  });

  it.each([
    ["nothing is installed", null],
    ["a package is missing", { "node_modules/binary-for-here": { version: "1.0.0" } }],
    [
      "a package is of another version",
      { ...INSTALLED, "node_modules/yjs": { version: "13.6.0" } },
    ],
    [
      "an optional one is of another version",
      { ...INSTALLED, "node_modules/binary-for-here": { version: "0.9.0" } },
    ],
    [
      "one is there that the lock does not know",
      { ...INSTALLED, "node_modules/left": { version: "1.0.0" } },
    ],
  ])("disagrees when %s", (_, installed) => {
    expect(agrees(installed, LOCK)).toBe(false);
  });
});
