import { expect } from "vitest";
import { SIDES, type ViewMarks } from "../../lib/body";
import { kneeSide, LEG, legStretch } from "./captured-panels";

const HALF_PERCENT = 0.005 * LEG; // 0.5 % of a leg, panel units
const STRAIGHT = 2000; // square panel units: below it a knee is drawn straight

/** Every thigh and shank as long as it was, and the knee on the side it was. */
export function expectLegsKept(before: ViewMarks, now: ViewMarks): void {
  for (const side of SIDES) {
    expect(legStretch(before, now, side)).toBeLessThan(HALF_PERCENT);
    const was = kneeSide(before, side);
    // A knee drawn straight may turn out bent: forward, as knees do.
    if (Math.abs(was) > STRAIGHT) expect(Math.sign(kneeSide(now, side))).toBe(Math.sign(was));
  }
}
