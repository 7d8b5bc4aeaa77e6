import { describe, expect, it } from "vitest";
import type { JointName, Side } from "../../../lib/body";
import { amountOf, remarkShape } from "../../../lib/export";
import { type CheckId, reviewWalk, type Walk } from "../../../lib/gait";
import { lift, push, shift, walk } from "../../support/walk";

const LEG = 420; // panel units, in the built walk
const GROUND = 1080;
const HIPS = ["left-hip", "right-hip"] as const;
const foot = (side: Side) =>
  (["ankle", "heel", "ball", "toe"] as const).map((part): JointName => `${side}-${part}`);

/** The shape of the first remark of a check, in the view it speaks of, and what it was measured by. */
function shapeOf(judged: Walk, check: CheckId, view: "side" | "front" = "side") {
  const remark = reviewWalk(judged, "trade").remarks.find((one) => one.check === check);
  const panel = judged.panels.find(({ id }) => id === remark?.panels.at(-1));
  if (remark === undefined || panel === undefined) throw new Error(`no ${check} was remarked`);
  return { shape: remarkShape(remark, panel, view), remark, panel };
}

describe("a remark on a pose", () => {
  it("drops the weight from the hips to the ground, over the span of the standing foot", () => {
    const { shape, panel } = shapeOf(push(walk(), "left passing", HIPS, -0.2), "weight-side");
    const [top, bottom] = shape?.dashed[0] ?? [];
    const hip = panel.marks.side["left-hip"];
    expect(top).toEqual({ x: hip?.x, y: hip?.y });
    expect(bottom).toEqual({ x: hip?.x, y: GROUND });
    const [heel, toe] = shape?.solid[0] ?? [];
    expect(heel?.x).toBeCloseTo(panel.marks.side["left-heel"]?.x ?? Number.NaN, 6);
    expect(toe?.x).toBeCloseTo(panel.marks.side["left-toe"]?.x ?? Number.NaN, 6);
    expect(shape?.arrow?.[0].x).toBeCloseTo(heel?.x ?? Number.NaN, 6); // from the heel it fell past
  });

  it("drops it in the front view where the remark speaks of that", () => {
    const away = shift(walk(), "right passing", HIPS, -0.08);
    const { shape, panel } = shapeOf(away, "weight-front", "front");
    const ankle = panel.marks.front["right-ankle"]?.x ?? Number.NaN;
    const [from, to] = shape?.solid[0] ?? [];
    expect(((from?.x ?? 0) + (to?.x ?? 0)) / 2).toBeCloseTo(ankle, 6);
    expect(shapeOf(away, "weight-front", "side").shape).toBeNull();
  });

  it.each([
    ["float", 0.05],
    ["sink", -0.05],
  ] as const)("shows how far a foot is off the ground: %s", (check, legs) => {
    const { shape, remark } = shapeOf(lift(walk(), "left passing", foot("left"), legs), check);
    const [from, to] = shape?.arrow ?? [];
    expect(from?.y).toBe(GROUND);
    expect(((from?.y ?? 0) - (to?.y ?? 0)) / LEG).toBeCloseTo(legs, 9);
    expect(amountOf(remark.measured)).toBe("5.0 %");
  });

  it("draws a sole against the level of its heel, in degrees where an angle was read", () => {
    const pitched = lift(walk(), "right passing", ["right-ball", "right-toe"], 0.06);
    const { shape, remark } = shapeOf(pitched, "foot-roll");
    const [heel, level] = shape?.dashed[0] ?? [];
    expect(level?.y).toBe(heel?.y);
    expect(shape?.solid[0]?.[1].y).toBeLessThan(heel?.y ?? 0);
    expect(amountOf(remark.measured)).toBe("18°");
  });

  it("has no place on the drawing for what belongs to time", () => {
    const gone = { ...walk(), panels: walk().panels.filter(({ id }) => id !== "left passing") };
    expect(shapeOf(gone, "missing-pose").shape).toBeNull();
  });
});
