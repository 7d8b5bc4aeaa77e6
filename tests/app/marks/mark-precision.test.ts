import { describe, expect, it } from "vitest";
import { coarsest, legOn, markPrecision } from "../../../app/_marks/mark-precision";
import type { ViewMarks } from "../../../lib/body";
import { walk } from "../../support/walk";

const halved = (marks: ViewMarks): ViewMarks =>
  Object.fromEntries(
    Object.entries(marks).map(([joint, { x, y, precision }]) => [
      joint,
      { x: x / 2, y: 1080 + (y - 1080) / 2, precision: precision / 2 },
    ]),
  );

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
    expect(markPrecision(width, 420)).toBeCloseTo(units, 10);
  });

  it("is a share of the figure's own leg, half as much on a figure half as large", () => {
    const full = walk();
    const half = {
      ...full,
      panels: full.panels.map((panel) => ({
        ...panel,
        marks: { side: halved(panel.marks.side), front: halved(panel.marks.front) },
      })),
    };
    expect(legOn(half.panels)).toBeCloseTo(legOn(full.panels) / 2, 6);
    const leg = legOn(half.panels);
    expect(markPrecision(1500, leg)).toBeCloseTo(SHARE.finest / 2, 1);
    expect(markPrecision(90, leg)).toBeCloseTo(SHARE.coarsest / 2, 1);
  });

  it("is a share of a plain figure's leg while none is marked", () => {
    expect(legOn([])).toBe(420);
  });

  it("calls a mark nobody has looked at as rough as a mark may be", () => {
    expect(coarsest(420)).toBeCloseTo(SHARE.coarsest, 10);
  });
});
