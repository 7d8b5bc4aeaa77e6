import { describe, expect, it } from "vitest";
import { type ViewMarks, withFootOfStand } from "../../../lib/body";

const at = (x: number, y: number) => ({ x, y, precision: 2 });
const stand: ViewMarks = {
  "left-heel": at(340, 1080),
  "left-toe": at(440, 1080),
  "left-ball": at(410, 1080),
  "left-ankle": at(360, 1046),
};

describe("the stand's foot", () => {
  it("lends ankle and ball to a heel and toe, turned with them", () => {
    const upright = { "left-heel": at(100, 1000), "left-toe": at(100, 900) }; // toe straight up
    const whole = withFootOfStand(upright, stand, 420);
    expect(whole["left-ball"]?.x).toBeCloseTo(100, 9);
    expect(whole["left-ball"]?.y).toBeCloseTo(930, 9);
    expect(whole["left-ankle"]?.x).toBeCloseTo(66, 9); // behind a sole that faces ahead
    expect(whole["left-ankle"]?.y).toBeCloseTo(980, 9);
  });

  it("is good to 3 % of a leg", () => {
    const whole = withFootOfStand({ "left-heel": at(0, 0), "left-toe": at(100, 0) }, stand, 400);
    expect(whole["left-ball"]?.precision).toBeCloseTo(Math.hypot(2, 12), 9);
  });

  it("never replaces what was marked", () => {
    const marked = { "left-heel": at(0, 0), "left-toe": at(100, 0), "left-ball": at(1, 2) };
    expect(withFootOfStand(marked, stand, 420)["left-ball"]).toEqual(at(1, 2));
  });

  it("stays away from a foot without heel or toe, and from the other side", () => {
    expect(withFootOfStand({ "left-heel": at(0, 0) }, stand, 420)).toEqual({
      "left-heel": at(0, 0),
    });
    const right = { "right-heel": at(0, 0), "right-toe": at(9, 0) };
    expect(withFootOfStand(right, stand, 420)).toBe(right);
  });
});
