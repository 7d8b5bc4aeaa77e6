import { describe, expect, it } from "vitest";
import { CHECK_IDS, METHODS, UNITS, YARDSTICKS } from "../../../lib/gait";
import { CHECKS } from "../../../lib/gait/checks";
import rates from "../../reference/trip-rates.json";

describe("methods", () => {
  it("tell of every check that is run, once, in the order of the ids", () => {
    const told = METHODS.map(({ check }) => check);
    expect(told).toEqual(CHECK_IDS.filter((id) => told.includes(id)));
    expect(told).toHaveLength(CHECKS.length);
  });

  it.each(METHODS)("ask, say what is read and how it is reckoned: $check", (method) => {
    expect(method.asks).toMatch(/^[A-Z].{15,}\?$/);
    expect(method.measures).toMatch(/^[A-Z].{40,}\.$/s);
    expect(method.formula.length).toBeGreaterThan(0);
    for (const line of method.formula) expect(line.trim().length).toBeGreaterThan(8);
    if (method.life !== null) expect(method.life).toMatch(/^[A-Z].{20,}\.$/s);
    expect(method.limits.length).toBeGreaterThan(0);
  });

  it.each(METHODS.flatMap(({ check, limits }) => limits.map((limit) => ({ check, ...limit }))))(
    "give a number, a unit and a source: $check, $of, $level",
    (limit) => {
      expect(limit.of.length).toBeGreaterThan(4);
      expect(UNITS).toContain(limit.unit);
      expect(limit.source.length).toBeGreaterThan(15);
      expect(limit.yardsticks.length).toBeGreaterThan(0);
      for (const yardstick of limit.yardsticks) expect(YARDSTICKS).toContain(yardstick);
      const numbers = [limit.value].flat();
      expect(numbers.every(Number.isFinite)).toBe(true);
      expect(numbers).toHaveLength(limit.fires === "outside" ? 2 : 1);
      expect(numbers.toSorted((a, b) => a - b)).toEqual(numbers);
      if (limit.tripRate !== null) {
        expect(limit.tripRate).toBeGreaterThanOrEqual(0);
        expect(limit.tripRate).toBeLessThan(1);
      }
    },
  );

  it.each(METHODS)("list no limit twice for one yardstick: $check", ({ limits }) => {
    const named = limits.flatMap(({ of, yardsticks, level, fires }) =>
      yardsticks.map((yardstick) => [of, yardstick, level, fires].join("|")),
    );
    expect(new Set(named).size).toBe(named.length);
  });
});

describe("rates that were counted", () => {
  it.each(rates.rules)("are told beside the limit: $check, $rule", ({ check, limit, rate }) => {
    const limits = METHODS.find((method) => method.check === check)?.limits ?? [];
    const counted = limits.filter(({ value, tripRate }) => {
      return String(value) === String(limit) && tripRate === rate;
    });
    expect(counted.length).toBeGreaterThan(0);
  });
});
