import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { frontToGround, groundToFront, groundToSide, PANEL, sideToGround } from "../../../lib/body";

const stretch = { place: 2, legLength: PANEL.plainLeg };

describe("ground space", () => {
  it("puts a hip at leg height over the panel's middle", () => {
    expect(sideToGround({ x: 360, y: 660 }, stretch)).toEqual({ x: 2, y: 1 });
  });

  it("has the walker go to the page's right in the side view", () => {
    expect(sideToGround({ x: 402, y: 1080 }, stretch).x).toBeCloseTo(2.1, 12);
  });

  it("has the walker's left on the page's right in the front view", () => {
    expect(frontToGround({ x: 402, y: 1080 }, 420).z).toBeCloseTo(-0.1, 12);
  });

  it("finds the way back from both views", () => {
    const coordinate = fc.double({ min: -2000, max: 2000, noNaN: true });
    fc.assert(
      fc.property(
        coordinate,
        coordinate,
        fc.double({ min: 50, max: 900, noNaN: true }),
        (x, y, leg) => {
          const side = groundToSide(sideToGround({ x, y }, { place: 3, legLength: leg }), {
            place: 3,
            legLength: leg,
          });
          const front = groundToFront(frontToGround({ x, y }, leg), leg);
          for (const point of [side, front]) {
            expect(point.x).toBeCloseTo(x, 6);
            expect(point.y).toBeCloseTo(y, 6);
          }
        },
      ),
    );
  });

  it("refuses a leg without length", () => {
    expect(() => sideToGround({ x: 0, y: 0 }, { place: 0, legLength: 0 })).toThrow(
      /sideToGround needs legLength above 0, got 0/,
    );
    expect(() => frontToGround({ x: 0, y: 0 }, Number.NaN)).toThrow(/got NaN/);
  });

  it("refuses a place that is no number", () => {
    expect(() => sideToGround({ x: 0, y: 0 }, { place: Number.NaN, legLength: 1 })).toThrow(
      /needs a finite place, got NaN/,
    );
  });
});
