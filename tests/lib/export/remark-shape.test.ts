import { describe, expect, it } from "vitest";
import type { JointName } from "../../../lib/body";
import { amountOf } from "../../../lib/export";
import type { Walk } from "../../../lib/gait";
import { lift, push, raise, shift, unmark, walk } from "../../support/walk";
import { foot, GROUND, LEG, leg, type Pointed, remarkOf, shapeIn, shapeOf } from "./shape-of";

const HIPS = ["left-hip", "right-hip"] as const;

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
    expect(shape?.solid[0]?.[1]?.y).toBeLessThan(heel?.y ?? 0);
    expect(amountOf(remark.measured)).toBe("18°");
  });

  it("has no place on the drawing for what belongs to time", () => {
    const gone = { ...walk(), panels: walk().panels.filter(({ id }) => id !== "left passing") };
    expect(shapeOf(gone, "missing-pose").shape).toBeNull();
  });
});

describe("the weight of a stand", () => {
  it("is dropped where body and load together are centred", () => {
    const stand = walk().panels.find(({ pose }) => pose === "stand");
    if (stand === undefined) throw new Error("the built walk begins with a stand");
    const load = { x: 500, y: 600, precision: 1 };
    const marks = { ...stand.marks, side: { ...stand.marks.side, load } };
    const laden = (share: number): Walk => ({
      ...walk(),
      load: share,
      panels: walk().panels.map((panel) => (panel.id === stand.id ? { ...panel, marks } : panel)),
    });
    const told: Pointed = {
      ...{ check: "weight-side", side: null, panels: [stand.id] },
      spots: [{ panel: stand.id, view: "side", joints: [] }],
      ...{ measured: leg(0.1), expected: leg(0.05) },
    };
    const weight = (share: number) => shapeIn(laden(share), told).shape?.dashed[0]?.[0]?.x ?? 0;
    // A quarter of the body's mass beside it draws the sum a fifth of the way over.
    expect(weight(0.25)).toBeCloseTo(weight(0) + (500 - weight(0)) / 5, 2); // the table's shares sum to 1.0001
  });
});

describe("a slip on the paper", () => {
  const FOOT: readonly JointName[] = ["right-heel", "right-ball", "right-toe"];
  const slip: Pointed = {
    ...{ check: "slide", side: "right", panels: ["right down", "right passing"] },
    spots: [{ panel: "right passing", view: "side", joints: ["right-ball"] }],
    ...{ measured: leg(0.08), expected: leg(0.05) },
  };
  const slipOf = (from: Walk, by = 0.08) => shapeIn(from, { ...slip, measured: leg(by) }).shape;
  const length = (shape: ReturnType<typeof slipOf>) => {
    const [from, to] = shape?.arrow ?? [];
    return (to?.x ?? Number.NaN) - (from?.x ?? Number.NaN);
  };

  it("draws its arrow as long as the foot slipped, whichever way the ground went", () => {
    expect(length(slipOf(walk(), 0))).toBeCloseTo(0, 6);
    const travelling = push(walk(), "right passing", FOOT, 0.08);
    expect(length(slipOf(travelling))).toBeCloseTo(0.08 * LEG, 6);
    const placed: Walk = {
      ...travelling,
      ...{ travel: "travelling", advance: 0 },
      panels: travelling.panels.map((panel) => ({
        ...panel,
        place: (panel.frame - 1) * travelling.advance,
      })),
    };
    expect(length(slipOf(placed))).toBeCloseTo(0.08 * LEG, 6);
  });

  it("leaves the footprint where the foot was put down, heel to toe", () => {
    const xs = slipOf(push(walk(), "right passing", FOOT, 0.08))?.dashed[0]?.map(({ x }) => x);
    const still = walk().panels.find(({ id }) => id === "right passing")?.marks.side;
    expect(Math.min(...(xs ?? []))).toBeCloseTo((still?.["right-heel"]?.x ?? Number.NaN) - 12, 6);
    expect(Math.max(...(xs ?? []))).toBeCloseTo((still?.["right-toe"]?.x ?? Number.NaN) + 12, 6);
  });

  it("draws no footprint of a foot whose heel is not marked, and nothing without the mark", () => {
    expect(slipOf(unmark(walk(), "right down", ["right-heel"]))?.dashed).toEqual([]);
    expect(slipOf(unmark(walk(), "right passing", ["right-ball"]))).toBeNull();
  });
});

describe("a remark against another pose", () => {
  it("stands its hip levels at the heights that were read", () => {
    const { shape, panel } = shapeOf(raise(walk(), "left down", 0.06), "hip-order");
    expect(panel.id).toBe("left down");
    expect(shape?.solid[0]?.[0]?.y).toBeCloseTo(GROUND - 0.97 * LEG, 6);
    expect(shape?.dashed[0]?.[0]?.y).toBeCloseTo(GROUND - 0.93 * LEG, 6);
    expect(shape?.area?.height).toBeCloseTo(0.04 * LEG, 6);
  });

  it("draws the range of the hips at the later of its two extremes", () => {
    const hips = ["left-hip", "right-hip"] as const;
    const { shape } = shapeIn(walk(), remarkOf("hip-range", ["left down", "left up"], hips));
    expect((shape?.area?.height ?? 0) / LEG).toBeCloseTo(0.05, 6); // 0.96 over 0.91
  });

  it("hangs the partner's limb from the same joint", () => {
    const own = ["left-hip", "left-knee", "left-ankle"] as const;
    const partner = ["right-hip", "right-knee", "right-ankle"] as const;
    const at = { ...remarkOf("symmetry", ["left passing", "right passing"], partner) };
    const spots = [{ panel: "left passing", view: "side" as const, joints: own }, ...at.spots];
    const { shape } = shapeIn(walk(), { ...at, spots });
    expect(shape?.dashed[0]?.[0]).toEqual(shape?.solid[0]?.[0]);
    expect(shape?.dashed[0]).toHaveLength(3);
  });

  it("points from where the first pose has the joint to where the last has it", () => {
    const open = push(walk(), "end", ["left-wrist"], 0.1);
    const { shape } = shapeIn(open, remarkOf("loop", ["left contact", "end"], ["left-wrist"]));
    const [from, to] = shape?.arrow ?? [];
    expect(((to?.x ?? 0) - (from?.x ?? 0)) / LEG).toBeCloseTo(0.1, 6);
    expect(shape?.rings).toEqual([from]);
  });

  it("crosses two marks that changed sides, and says whose each is", () => {
    const knees = ["left-knee", "right-knee"] as const;
    const { shape } = shapeIn(walk(), remarkOf("sides", ["left down", "left passing"], knees));
    expect(shape?.letters.map(({ text }) => text)).toEqual(["L", "R"]);
    expect(shape?.dashed).toHaveLength(2);
  });

  it("follows the hips from the panel before, over the ground that went by", () => {
    const hips = ["left-hip", "right-hip"] as const;
    const { shape } = shapeIn(walk(), remarkOf("hitch", ["left down", "left passing"], hips));
    const way = shape?.dashed[0] ?? [];
    const [from, to] = [way[0], way.at(-1)];
    expect(((to?.x ?? 0) - (from?.x ?? 0)) / LEG).toBeCloseTo(0.18, 6); // a quarter of a step of 0.72
    expect(shape?.rings).toEqual([from, to]);
  });

  it("bends their way as the panels beside have it, and never beyond the two poses in height", () => {
    const hips = ["left-hip", "right-hip"] as const;
    const pointed = remarkOf("hitch", ["left down", "left passing"], hips);
    const way = shapeIn(walk(), pointed).shape?.dashed[0] ?? [];
    const [from, to] = [way[0], way.at(-1)];
    const middle = way[Math.floor(way.length / 2)];
    expect(middle?.x).toBeCloseTo(((from?.x ?? 0) + (to?.x ?? 0)) / 2, 0); // evenly ahead
    // The down is a turn, the passing is not: the hips leave it level and are still low halfway.
    expect((middle?.y ?? 0) - ((from?.y ?? 0) + (to?.y ?? 0)) / 2).toBeGreaterThan(0.5);
    for (const { y } of way) {
      expect(y).toBeLessThanOrEqual((from?.y ?? 0) + 1e-9);
      expect(y).toBeGreaterThanOrEqual((to?.y ?? 0) - 1e-9);
    }
    const alone = {
      ...walk(),
      panels: walk().panels.filter(({ id }) => pointed.panels.includes(id)),
    };
    const [start, , , , , , half, , , , , , end] = shapeIn(alone, pointed).shape?.dashed[0] ?? [];
    expect(half?.y).toBeCloseTo(((start?.y ?? 0) + (end?.y ?? 0)) / 2, 6);
  });
});
