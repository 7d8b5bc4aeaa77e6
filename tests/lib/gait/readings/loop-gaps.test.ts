import { describe, expect, it } from "vitest";
import { reviewWalk, type Walk } from "../../../../lib/gait";
import { push, unmark, walk } from "../../../support/walk";

const gapOf = (judged: Walk) => reviewWalk(judged, "trade").strideReadings[0]?.loopGap;

describe("the loop gap of a stride", () => {
  it("is nothing where the last pose is the first again", () => {
    expect(gapOf(walk())).toMatchObject({ kind: "value", unit: "leg" });
    expect(gapOf(walk())).toHaveProperty("value", expect.closeTo(0, 9));
  });

  it("is the joint's that jumps furthest", () => {
    const open = push(push(walk(), "end", ["left-wrist"], 0.07), "end", ["right-elbow"], 0.04);
    expect(gapOf(open)).toHaveProperty("value", expect.closeTo(0.07, 9));
  });

  it("is as sure as both joints and the hips that they are laid on each other by", () => {
    const open = push(walk({ precision: 0.006 }), "end", ["left-wrist"], 0.07);
    // Both wrists, and two middles of two hips each.
    const own = 0.006 * Math.sqrt(1 + 1 + 1 / 2 + 1 / 2);
    expect(gapOf(open)).toHaveProperty("plusMinus", expect.closeTo(own, 6));
  });

  it("cannot be told without hips", () => {
    expect(gapOf(unmark(walk(), "end", ["left-hip", "right-hip"]))).toMatchObject({
      kind: "cannot-tell",
      needs: expect.stringContaining("hips"),
    });
  });
});
