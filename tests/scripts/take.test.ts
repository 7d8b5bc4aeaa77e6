import { describe, expect, it } from "vitest";
import { take } from "../../scripts/house/take.mjs";

const GREEN = { code: 0, output: "all well" };
const silent = () => {};

/** Steps that note when they begin and end, and end when the test lets them. */
function noted() {
  const log: string[] = [];
  const lets: Record<string, (answer?: object) => void> = {};
  const step = (name: string, more: object = {}) => ({
    name,
    ...more,
    work: () => {
      log.push(`${name} begins`);
      return new Promise((resolve) => {
        lets[name] = (answer = GREEN) => {
          log.push(`${name} ends`);
          resolve(answer);
        };
      });
    },
  });
  const letGo = async (name: string, answer?: object) => {
    lets[name]?.(answer);
    await new Promise(setImmediate);
  };
  return { log, step, letGo };
}

describe("taking the steps of a verification", () => {
  it("runs two side by side, and one that needs both hands alone", async () => {
    const { log, step, letGo } = noted();
    const taken = take([step("a"), step("b"), step("c", { hands: 2 }), step("d")], silent);
    await letGo("");
    expect(log).toEqual(["a begins", "b begins"]);
    await letGo("a");
    expect(log.slice(2)).toEqual(["a ends", "d begins"]);
    await letGo("b");
    await letGo("d");
    expect(log.at(-1)).toBe("c begins");
    await letGo("c");
    await taken;
  });

  it("begins a step when what it comes after is done, or is not asked for", async () => {
    const { log, step, letGo } = noted();
    const [first, absent] = [step("first"), step("absent")];
    const taken = take([first, step("second", { after: [first, absent] })], silent);
    await letGo("");
    expect(log).toEqual(["first begins"]);
    await letGo("first", { code: 1, output: "broken" });
    expect(log.at(-1)).toBe("second begins");
    await letGo("second");
    await taken;
  });

  it("adds up tests, and counts a step that failed outside of them as one", async () => {
    const told: string[] = [];
    const answers = [
      { ...GREEN, tally: { passed: 3, failed: 1, skipped: 2 } },
      { ...GREEN, code: 1, output: "a leak", tally: { passed: 4, failed: 0, skipped: 0 } },
      { code: 2, output: "a comma\n" },
      GREEN,
    ];
    const steps = answers.map((answer, n) => ({ name: `step ${n}`, work: async () => answer }));
    expect(await take(steps, (line: string) => told.push(line))).toEqual({
      ...{ passed: 7, failed: 3, skipped: 2 },
    });
    expect(told).toContain("a comma");
    expect(told.filter((line) => line.startsWith("✗")).length).toBe(3);
    expect(told.find((line) => line.startsWith("✗ step 0"))).toMatch(/ s \(3 of 6 tests passed\)$/);
    expect(told.find((line) => line.startsWith("✓"))).toMatch(/^✓ step 3: \d+\.\d s$/);
  });
});
