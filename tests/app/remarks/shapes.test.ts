import { describe, expect, it } from "vitest";
import { hipShape } from "../../../app/_remarks/hip-shape";
import { slipShape } from "../../../app/_remarks/slip-shape";
import type { JointName } from "../../../lib/body";
import { reviewWalk, type Walk } from "../../../lib/gait";
import { push, raise, unmark, walk } from "../../support/walk";

const FOOT: readonly JointName[] = ["right-heel", "right-ball", "right-toe"];
const LEG = 420; // panel units a leg in the built walk
const panelOf = (from: Walk, id: string) => {
  const panel = from.panels.find((candidate) => candidate.id === id);
  if (panel === undefined) throw new Error(`no panel ${id}`);
  return panel;
};
const slipOf = (from: Walk) =>
  slipShape({
    earlier: panelOf(from, "right down"),
    panel: panelOf(from, "right passing"),
    side: "right",
    joint: "right-ball",
    pace: from,
    legUnits: LEG,
  });

describe("a slip on the paper", () => {
  it("puts the footprint under a foot that stayed", () => {
    const shape = slipOf(walk());
    expect(shape?.from.x).toBeCloseTo(shape?.to.x ?? Number.NaN, 6);
  });

  it("draws its arrow as long as the foot slipped, whichever way the ground went", () => {
    const shape = slipOf(push(walk(), "right passing", FOOT, 0.08));
    expect((shape?.to.x ?? 0) - (shape?.from.x ?? 0)).toBeCloseTo(0.08 * LEG, 6);
    const travelling = push(walk(), "right passing", FOOT, 0.08);
    const placed: Walk = {
      ...travelling,
      travel: "travelling",
      advance: 0,
      panels: travelling.panels.map((panel) => ({
        ...panel,
        place: (panel.frame - 1) * travelling.advance,
      })),
    };
    const same = slipOf(placed);
    expect((same?.to.x ?? 0) - (same?.from.x ?? 0)).toBeCloseTo(0.08 * LEG, 6);
    const onTheSpot = slipOf({ ...placed, travel: "on-the-spot", advance: travelling.advance });
    expect(onTheSpot).toEqual(slipOf(travelling));
  });

  it("leaves the footprint where the foot was put down, heel to toe", () => {
    const footprint = slipOf(push(walk(), "right passing", FOOT, 0.08))?.footprint ?? [];
    const xs = footprint.map(({ x }) => x);
    const heel = panelOf(walk(), "right passing").marks.side["right-heel"]?.x ?? Number.NaN;
    const toe = panelOf(walk(), "right passing").marks.side["right-toe"]?.x ?? Number.NaN;
    expect(Math.min(...xs)).toBeCloseTo(heel - 12, 6);
    expect(Math.max(...xs)).toBeCloseTo(toe + 12, 6);
  });

  it("draws no footprint of a foot whose heel is not marked, and nothing without the mark", () => {
    expect(slipOf(unmark(walk(), "right down", ["right-heel"]))?.footprint).toBeNull();
    expect(slipOf(unmark(walk(), "right passing", ["right-ball"]))).toBeNull();
  });
});

describe("a hip gap on the paper", () => {
  it("stands at the heights that were read", () => {
    const review = reviewWalk(raise(walk(), "left down", 0.06), "trade");
    const remark = review.remarks.find(({ check }) => check === "hip-order");
    if (remark === undefined) throw new Error("a high down draws a remark");
    const shape = hipShape(remark, review);
    expect(remark.panels.at(-1)).toBe("left down");
    expect(shape?.view).toBe("side");
    expect(shape?.here).toBeCloseTo(1080 - 0.97 * LEG, 6);
    expect(shape?.there).toBeCloseTo(1080 - 0.93 * LEG, 6);
  });
});
