import { describe, expect, it } from "vitest";
import { distance, median, midpoint, rootSumSquare } from "../../../lib/geometry";

describe("plain geometry", () => {
  it("measures the distance of a 3-4-5 triangle", () => {
    expect(distance({ x: 1, y: 1 }, { x: 4, y: 5 })).toBe(5);
  });

  it("finds the middle of a line", () => {
    expect(midpoint({ x: 0, y: 2 }, { x: 4, y: 4 })).toEqual({ x: 2, y: 3 });
  });

  it("takes the middle value, or the mean of the two in the middle", () => {
    expect(median([9, 1, 5])).toBe(5);
    expect(median([9, 1, 5, 6])).toBe(5.5);
  });

  it("refuses the median of nothing", () => {
    expect(() => median([])).toThrow(/at least one value, got none/);
  });

  it("adds independent errors by their squares", () => {
    expect(rootSumSquare(3, 4)).toBe(5);
    expect(rootSumSquare()).toBe(0);
  });
});
