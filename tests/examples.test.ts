import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { alike, type Example, examplesIn, runExample } from "./support/docstring-examples";

const LIB = fileURLToPath(new URL("../lib", import.meta.url));
const FILES = readdirSync(LIB, { recursive: true, encoding: "utf8" })
  .filter((path) => path.endsWith(".ts"))
  .sort();
const FOUND = FILES.flatMap((path) =>
  examplesIn(path, readFileSync(`${LIB}/${path}`, "utf8")).map((example) => ({ path, example })),
);

describe("examples in the docstrings of lib", () => {
  it("were found", () => {
    expect(FILES.length).toBeGreaterThan(10);
    expect(FOUND.length).toBeGreaterThan(0);
  });

  for (const { path, example } of FOUND) {
    const { line, expression, value } = example;
    it(`${path}:${line} ${expression.replace(/\s+/g, " ")} gives ${value}`, async () => {
      const { given, said } = runExample(example, await inReach(path));
      if (!alike(given, said, value)) expect(given).toEqual(said);
    });
  }
});

describe("the reader of examples", () => {
  const source = `
/**
 * Half of it.
 *
 * @example
 * const whole = 3;
 * half(whole); // => 1.5
 * [2, 4]
 *   .map(half)
 *   .join(); // => "1,2"
 */
export const half = (whole: number) => whole / 2;
`;
  const [first, second] = examplesIn("half.ts", source) as [Example, Example];

  it("takes each claim with the lines before it", () => {
    expect([first, second]).toEqual([
      { line: 7, before: "const whole = 3;", expression: "half(whole)", value: "1.5" },
      {
        line: 8,
        before: "const whole = 3;",
        expression: "[2, 4]\n  .map(half)\n  .join()",
        value: '"1,2"',
      },
    ]);
  });

  it("runs the module's own function", () => {
    const half = (whole: number) => whole / 2;
    expect(runExample(first, { half })).toEqual({ given: 1.5, said: 1.5 });
    expect(runExample(second, { half })).toEqual({ given: "1,2", said: "1,2" });
    expect(() => runExample(first, {})).toThrow(/half is not defined/);
  });

  it("refuses an example that claims nothing", () => {
    expect(() => examplesIn("half.ts", source.replaceAll("=>", "is"))).toThrow(/half\.ts:5/);
  });

  it.each([
    [1 / 3, 0.33, "0.33", true],
    [1 / 3, 0.34, "0.34", false],
    [2, 2.4, "2", false],
    [Number.NaN, 1, "1", false],
    [{ x: 1.004, y: [2] }, { x: 1, y: [2] }, "{ x: 1.00, y: [2] }", true],
    [{ x: 1, y: 2 }, { x: 1 }, "{ x: 1 }", false],
    [[1, 2], [1], "[1]", false],
    ["left", "right", '"right"', false],
    [null, undefined, "undefined", false],
  ])("holds %j against %j, written %s: %j", (given, said, text, answer) => {
    expect(alike(given, said, text)).toBe(answer);
  });
});

/** What an example may name: its own module's exports, and those of every door of lib. */
async function inReach(path: string): Promise<Record<string, unknown>> {
  const doors = FILES.filter((file) => /^[^/]+\/index\.ts$/.test(file));
  const modules = await Promise.all(
    [...doors, path].map((file): Promise<object> => import(`${LIB}/${file}`)),
  );
  return Object.assign({}, ...modules) as Record<string, unknown>;
}
