import { describe, expect, it } from "vitest";
import { segmentLengths } from "../../../lib/body";

const at = (x: number, y: number) => ({ x, y, precision: 3 });

describe("the bones of a view", () => {
  it("are as long as their ends are apart, with the ± of both", () => {
    const marks = { "left-hip": at(0, 0), "left-knee": at(30, 40), "left-ankle": at(30, 100) };
    expect(segmentLengths(marks)).toMatchObject([
      { segment: "thigh", side: "left", value: 50, ends: ["left-hip", "left-knee"] },
      { segment: "shank", side: "left", value: 60 },
    ]);
    expect(segmentLengths(marks)[0]?.plusMinus).toBeCloseTo(Math.hypot(3, 3), 9);
  });

  it("are not there where an end is not marked, or no number", () => {
    expect(segmentLengths({ "left-hip": at(0, 0) })).toEqual([]);
    expect(segmentLengths({ neck: at(0, 0), head: at(Number.NaN, 0) })).toEqual([]);
  });
});
