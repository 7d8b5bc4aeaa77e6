import { describe, expect, it } from "vitest";
import { COARSEST, markPrecision } from "../../../app/_marks/mark-precision";

// A leg is 420 panel units and a view 720 across; the bounds are those of the measuring's own page.
const SHARE = { finest: 0.005 * 420, coarsest: 0.03 * 420 };

describe("how exactly a mark is placed", () => {
  it.each([
    { width: 720, units: SHARE.finest }, // two pixels are 2 units, less than 0.5 % of a leg
    { width: 360, units: 4 },
    { width: 240, units: 6 },
    { width: 90, units: SHARE.coarsest }, // two pixels are 16 units
    { width: 1500, units: SHARE.finest },
  ])("is ± $units units on a paper $width px wide", ({ width, units }) => {
    expect(markPrecision(width)).toBeCloseTo(units, 10);
  });

  it("calls a mark nobody has looked at as rough as a mark may be", () => {
    expect(COARSEST).toBeCloseTo(SHARE.coarsest, 10);
  });
});
