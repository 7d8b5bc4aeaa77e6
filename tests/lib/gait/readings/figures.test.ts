import { describe, expect, it } from "vitest";
import {
  compassRise,
  harmonics,
  symmetryAngle,
  symmetryIndex,
  walkRatio,
} from "../../../../lib/gait";
import figures from "../../../reference/walk-figures.json";

describe("worked figures", () => {
  it("rise over stiff legs as a pair of compasses does", () => {
    const { leg, step, rise, approximately } = figures.compass;
    expect(compassRise(leg, step)).toBeCloseTo(rise, 4);
    expect(step ** 2 / (8 * leg)).toBeCloseTo(approximately, 4);
    expect(() => compassRise(1, 2)).toThrow(/a step shorter than two legs/);
    expect(() => compassRise(Number.NaN, 1)).toThrow(RangeError);
  });

  it("are as unlike left and right as Robinson and Zifchock have it", () => {
    const { left, right, index, angle } = figures.symmetry;
    expect(symmetryIndex(left, right)).toBeCloseTo(index, 5);
    expect(symmetryAngle(left, right)).toBeCloseTo(angle, 5);
    expect(symmetryAngle(right, left)).toBeCloseTo(-angle, 5);
    expect(symmetryAngle(1, 1)).toBe(0);
  });

  it("share their harmonics between both steps as worked", () => {
    const { even, odd, ratio, share } = figures.harmonics;
    const wave = (of: (turn: number) => number) =>
      Array.from({ length: 100 }, (_, n) => of((2 * Math.PI * n) / 100));
    const found = harmonics(wave((w) => even * Math.sin(2 * w) + odd * Math.sin(w)));
    expect(found.even / found.odd).toBeCloseTo(ratio, 9);
    expect(found.even / (found.even + found.odd)).toBeCloseTo(share, 9);
    const alike = harmonics(wave((w) => Math.sin(2 * w)));
    expect(alike.even / (alike.even + alike.odd)).toBeCloseTo(1, 9);
    expect(() => harmonics([1, 2])).toThrow(/three samples at least/);
    expect(() => harmonics([1, 2, Number.NaN])).toThrow(RangeError);
  });

  it("walk at the ratio that people keep", () => {
    const { step, cadence, ratio } = figures.walkRatio;
    expect(walkRatio(step, cadence)).toBeCloseTo(ratio, 9);
  });
});
