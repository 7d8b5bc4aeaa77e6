import { describe, expect, it } from "vitest";
import type { JointName, Side } from "../../../lib/body";
import { lift, raise, unmark, walk } from "../../support/walk";
import { foot, GROUND, LEG, type Pointed, remarkOf, shapeIn, shapeOf } from "./shape-of";

describe("a remark on a limb or a span", () => {
  it("lays the bone's right length beside it", () => {
    const shank = remarkOf("limb-length", ["left passing"], ["left-knee", "left-ankle"]);
    const longer = { ...shank, measured: { value: 0.25, plusMinus: 0, unit: "share" as const } };
    const { shape } = shapeIn(walk(), longer);
    const drawn = lengthOf(shape?.solid[0]);
    expect(lengthOf(shape?.dashed[0]) / drawn).toBeCloseTo(1 / 1.25, 6);
    expect(lengthOf(shape?.arrow ?? undefined) / drawn).toBeCloseTo(1 - 1 / 1.25, 6);
  });

  it.each([
    ["left", 0.06],
    ["left", -0.06],
    ["right", 0.06],
    ["right", -0.06],
  ] as const)("lays it beside the bone of a pair that is told: %s, by %d of a leg", (side, by) => {
    const joints = (one: Side): readonly JointName[] => [`${one}-elbow`, `${one}-wrist`];
    const judged = lift(walk(), "left passing", [`${side}-wrist`], by);
    const { panel } = shapeIn(judged, remarkOf("limb-length", ["left passing"], joints(side)));
    const of = (one: Side) => lengthOf(joints(one).map((joint) => panel.marks.side[joint] ?? at0));
    const [own, other] = [of(side), of(side === "left" ? "right" : "left")];
    const apart = { value: Math.abs(own - other) / ((own + other) / 2), plusMinus: 0 };
    const told: Pointed = {
      ...remarkOf("limb-length", ["left passing"], joints(side)),
      side,
      spots: (["left", "right"] as const).map((one) => ({
        ...{ panel: "left passing", view: "side" as const, joints: joints(one) },
      })),
      measured: { ...apart, unit: "share" },
    };
    const { shape } = shapeIn(judged, told);
    expect(lengthOf(shape?.solid[0])).toBeCloseTo(own, 6);
    expect(lengthOf(shape?.dashed[0])).toBeCloseTo(other, 6);
  });

  it("lays beside a bone of the front view how long it can be, on either side", () => {
    for (const side of ["left", "right"] as const) {
      const joints: readonly JointName[] = [`${side}-knee`, `${side}-ankle`];
      const told = { ...remarkOf("limb-length", ["left passing"], joints, "front"), side };
      const measured = { value: 0.2, plusMinus: 0, unit: "share" as const };
      const { shape, panel } = shapeIn(walk(), { ...told, measured }, "front");
      expect(shape?.solid[0]?.[0]).toMatchObject({ x: panel.marks.front[`${side}-knee`]?.x });
      expect(lengthOf(shape?.dashed[0]) * 1.2).toBeCloseTo(lengthOf(shape?.solid[0]), 6);
    }
  });

  it("lays beside a leg that does not reach how far it does", () => {
    const far = raise(walk(), "left passing", 0.12);
    const { shape, remark } = shapeOf(far, "reach");
    const missing = lengthOf(shape?.solid[0]) - lengthOf(shape?.dashed[0]);
    expect(missing / LEG).toBeCloseTo(remark.measured.value, 6);
  });

  it("points from the straight leg to a knee that is bent the wrong way", () => {
    const leg = ["left-hip", "left-knee", "left-ankle"] as const;
    const { shape } = shapeIn(walk(), remarkOf("knee", ["left passing"], leg));
    const [from, to] = shape?.arrow ?? [];
    const knee = walk().panels.find(({ id }) => id === "left passing")?.marks.side["left-knee"];
    expect(to).toEqual({ x: knee?.x, y: knee?.y });
    expect((to?.x ?? 0) - (from?.x ?? 0)).toBeGreaterThan(0);
  });

  it("spans the feet under the ground, from the front where that is asked", () => {
    const feet = ["left-ankle", "right-ankle"] as const;
    const { shape } = shapeIn(walk(), remarkOf("width", ["left passing"], feet, "front"), "front");
    const xs = shape?.solid[0]?.map(({ x }) => x) ?? [];
    expect((Math.max(...xs) - Math.min(...xs)) / LEG).toBeCloseTo(0.11, 6);
    expect(shape?.label.y).toBeGreaterThan(GROUND);
  });

  it("draws a step as its span, and a flight as the height of the lower foot", () => {
    const feet = ["left-ankle", "right-ankle"] as const;
    const step = shapeIn(walk(), remarkOf("tempo", ["left contact", "right contact"], feet)).shape;
    const xs = step?.solid[0]?.map(({ x }) => x) ?? [];
    const contact = walk().panels.find(({ id }) => id === "left contact");
    const [left, right] = feet.map((foot) => contact?.marks.side[foot]?.x ?? Number.NaN);
    expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo((left ?? 0) - (right ?? 0), 6);
    const toes = ["left-toe", "right-toe"] as const;
    const flown = lift(walk(), "left up", [...foot("left"), ...foot("right")], 0.2);
    const { shape, panel } = shapeIn(flown, remarkOf("tempo", ["left up"], toes));
    const lower = Math.max(...toes.map((toe) => panel.marks.side[toe]?.y ?? 0));
    expect(shape?.arrow?.[1].y).toBeCloseTo(lower, 6);
  });

  it("holds the heights of both views against each other, in each of them", () => {
    const raised = lift(walk(), "left passing", ["left-knee"], 0);
    const both: Pointed = {
      ...remarkOf("views", ["left passing"], ["left-knee"]),
      spots: (["side", "front"] as const).map((view) => ({
        panel: "left passing",
        view,
        joints: ["left-knee" as const],
      })),
    };
    for (const view of ["side", "front"] as const) {
      const { shape } = shapeIn(raised, both, view);
      expect(shape?.dashed[0]?.[0]?.y).toBeCloseTo(shape?.solid[0]?.[0]?.y ?? Number.NaN, 6);
    }
  });

  it("draws nothing where a mark is missing", () => {
    const arm = remarkOf("opposition", ["left contact"], ["left-wrist", "left-toe"]);
    expect(shapeIn(walk(), arm).shape?.rings).toHaveLength(2);
    expect(shapeIn(unmark(walk(), "left contact", ["left-wrist"]), arm).shape).toBeNull();
  });
});

const at0 = { x: 0, y: 0 };

function lengthOf(path: readonly { readonly x: number; readonly y: number }[] | undefined): number {
  const [from, to] = path ?? [];
  return Math.hypot((to?.x ?? 0) - (from?.x ?? 0), (to?.y ?? 0) - (from?.y ?? 0));
}
