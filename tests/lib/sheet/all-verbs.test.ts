import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";

const read = (path: string) => readFileSync(new URL(`../../../${path}`, import.meta.url), "utf8");

/** Every verb there is: a file of `lib/sheet/verbs` holds the verb it is named after. */
const VERBS = readdirSync(new URL("../../../lib/sheet/verbs/", import.meta.url)).map((file) =>
  file.replace(/\.ts$/, "").replace(/-./g, (dash) => dash.slice(1).toUpperCase()),
);

describe("the verbs of a sheet", () => {
  it("are many, and each file holds the one it is named after", () => {
    expect(VERBS.length).toBeGreaterThan(15);
    for (const verb of VERBS) {
      const file = verb.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);
      expect(read(`lib/sheet/verbs/${file}.ts`)).toContain(`export function ${verb}`);
    }
  });

  it.each(VERBS)("are all thrown under the dice: %s", (verb) => {
    // A call, not the import: a name followed by its brackets.
    expect(read("tests/support/scribble.ts")).toMatch(new RegExp(`\\b${verb}\\(`));
  });
});
