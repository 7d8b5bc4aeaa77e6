import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { bendOf, beyondReach, middleJoint, PANEL } from "../../../lib/body";
import { distance } from "../../../lib/geometry";

/** 0.5 % of a leg: what a figure's limbs may be off. Panel units. */
const HALF_PERCENT = 0.005 * PANEL.plainLeg;

const hip = { x: 360, y: 660 };
const bone = fc.double({ min: 150, max: 250, noNaN: true });
const bend = fc.constantFrom<1 | -1>(1, -1);

describe("the joint between two bones", () => {
  it("keeps both lengths and the side, wherever the end can be reached", () => {
    fc.assert(
      fc.property(
        ...[bone, bone, bend],
        fc.double({ min: 0, max: 2 * Math.PI, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (upper, lower, way, angle, share) => {
          const nearest = Math.abs(upper - lower) + 1;
          const apart = nearest + share * (upper + lower - nearest);
          const end = { x: hip.x + apart * Math.cos(angle), y: hip.y + apart * Math.sin(angle) };
          const knee = middleJoint(hip, end, { upper, lower, bend: way });
          if (knee === null) throw new Error("this end is within reach");
          expect(Math.abs(distance(hip, knee) - upper)).toBeLessThan(HALF_PERCENT);
          expect(Math.abs(distance(knee, end) - lower)).toBeLessThan(HALF_PERCENT);
          expect([way, null]).toContain(bendOf(hip, knee, end));
        },
      ),
    );
  });

  it("agrees with the triangle of sides 3, 4 and 5", () => {
    // Euclid I.47: the height on a hypotenuse of 5 is 3 · 4 / 5.
    const knee = middleJoint({ x: 0, y: 0 }, { x: 0, y: 5 }, { upper: 3, lower: 4, bend: -1 });
    expect(knee?.x).toBeCloseTo(2.4, 12);
    expect(knee?.y).toBeCloseTo(1.8, 12);
  });

  it("lets a straight limb give by 0.4 %, in both bones alike, and by no more", () => {
    const bones = { upper: 200, lower: 100, bend: -1 } as const;
    const knee = middleJoint({ x: 0, y: 0 }, { x: 0, y: 301 }, bones);
    expect(knee?.y).toBeCloseTo((200 * 301) / 300, 10);
    expect(middleJoint({ x: 0, y: 0 }, { x: 0, y: 302 }, bones)).toBeNull();
    expect(beyondReach({ x: 0, y: 0 }, { x: 0, y: 302 }, bones)).toBe(2);
    expect(beyondReach({ x: 0, y: 0 }, { x: 0, y: 250 }, bones)).toBe(0);
  });

  it("is nowhere when the end is too near", () => {
    const bones = { upper: 200, lower: 100, bend: -1 } as const;
    expect(middleJoint({ x: 0, y: 0 }, { x: 0, y: 90 }, bones)).toBeNull();
    expect(middleJoint({ x: 0, y: 0 }, { x: 0, y: 0 }, { ...bones, lower: 200 })).toBeNull();
  });

  it("refuses bones without length and points that are none", () => {
    const zero = { x: 0, y: 0 };
    expect(() => middleJoint(zero, zero, { upper: 0, lower: 1, bend: 1 })).toThrow(
      /middleJoint needs upper above 0, got 0/,
    );
    expect(() =>
      middleJoint({ x: Number.NaN, y: 0 }, zero, { upper: 1, lower: 1, bend: 1 }),
    ).toThrow(/needs a finite rootX, got NaN/);
  });

  it("does not say which way a straight limb bends", () => {
    expect(bendOf({ x: 0, y: 0 }, { x: 0.1, y: 50 }, { x: 0, y: 100 })).toBeNull();
    expect(bendOf({ x: 0, y: 0 }, { x: 9, y: 50 }, { x: 0, y: 100 })).toBe(-1);
    expect(bendOf({ x: 0, y: 0 }, { x: -9, y: 50 }, { x: 0, y: 100 })).toBe(1);
  });
});
