import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { boundsOf, touchesStroke } from "../../../lib/ink";
import { strokeOf } from "../../support/strokes";

const LINE = strokeOf([
  [0, 100, 1],
  [200, 100, 1],
]);

describe("the rubber", () => {
  it("touches ink within its radius and half the ink's width, and not beyond", () => {
    const at = (y: number) => ({ from: { x: 50, y }, to: { x: 60, y }, radius: 8 });
    expect(touchesStroke(LINE, at(90))).toBe(true); // 10 = 8 + 4 / 2
    expect(touchesStroke(LINE, at(89.9))).toBe(false);
  });

  it("touches what a fast move jumps over", () => {
    const rub = { from: { x: 100, y: -500 }, to: { x: 101, y: 700 }, radius: 0.1 };
    expect(touchesStroke(LINE, rub)).toBe(true);
  });

  it("touches a tap", () => {
    const tap = strokeOf([[10, 10, 1]]);
    expect(touchesStroke(tap, { from: { x: 0, y: 0 }, to: { x: 20, y: 20 }, radius: 1 })).toBe(
      true,
    );
    expect(touchesStroke(tap, { from: { x: 0, y: 9 }, to: { x: 0, y: 11 }, radius: 1 })).toBe(
      false,
    );
  });

  it("passes the empty corner of a bent stroke's box", () => {
    const bent = strokeOf([
      [0, 0, 1],
      [100, 0, 1],
      [100, 100, 1],
    ]);
    const corner = { x: 10, y: 90 };
    expect(touchesStroke(bent, { from: corner, to: corner, radius: 5 })).toBe(false);
  });

  it("agrees with points laid densely along both", () => {
    const coordinate = fc.integer({ min: 0, max: 60 });
    const spot = fc.record({ x: coordinate, y: coordinate });
    fc.assert(
      fc.property(spot, spot, spot, spot, (a, b, from, to) => {
        const stroke = strokeOf([
          [a.x, a.y, 1],
          [b.x, b.y, 1],
        ]);
        const radius = 3;
        const gap = densestGap([a, b], [from, to]);
        const edge = radius + stroke.width / 2;
        if (Math.abs(gap - edge) < 0.6) return; // the points are half a unit apart
        expect(touchesStroke(stroke, { from, to, radius })).toBe(gap < edge);
      }),
      { numRuns: 120 },
    );
  });
});

describe("the box round a stroke", () => {
  it("includes half its width", () => {
    expect(boundsOf(LINE)).toEqual({ left: -2, top: 98, right: 202, bottom: 102 });
  });
});

type Spot = { readonly x: number; readonly y: number };

function densestGap(one: readonly [Spot, Spot], other: readonly [Spot, Spot]): number {
  const along = ([a, b]: readonly [Spot, Spot]) =>
    Array.from({ length: 171 }, (_, i) => ({
      x: a.x + ((b.x - a.x) * i) / 170,
      y: a.y + ((b.y - a.y) * i) / 170,
    }));
  const others = along(other);
  return Math.min(
    ...along(one).flatMap((p) => others.map((q) => Math.hypot(p.x - q.x, p.y - q.y))),
  );
}
