import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { insidePolygon } from "../../../lib/geometry";

const square = [
  { x: 0, y: 0 },
  { x: 10, y: 0 },
  { x: 10, y: 10 },
  { x: 0, y: 10 },
];
const within = fc.double({ min: 0.01, max: 9.99, noNaN: true });
const anywhere = fc.double({ min: -50, max: 50, noNaN: true });

describe("a point within an outline", () => {
  it("is told from one outside, whichever way the corners run", () => {
    for (const corners of [square, square.toReversed()]) {
      fc.assert(fc.property(within, within, (x, y) => insidePolygon({ x, y }, corners)));
      fc.assert(
        fc.property(anywhere, anywhere, (x, y) => {
          const apart = x < 0 || x > 10 || y < 0 || y > 10;
          return !apart || !insidePolygon({ x, y }, corners);
        }),
      );
    }
  });

  it("is not found in what encloses nothing", () => {
    expect(insidePolygon({ x: 1, y: 1 }, [])).toBe(false);
    expect(insidePolygon({ x: 1, y: 1 }, square.slice(0, 2))).toBe(false);
  });
});
