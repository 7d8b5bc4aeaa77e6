import { describe, expect, it } from "vitest";
import {
  applyFix,
  fixFor,
  METHODS,
  type Remark,
  reviewWalk,
  type Walk,
} from "../../../../lib/gait";
import neighbours from "../../../reference/neighbouring-steps.json";
import { lift, type PanelName, push, raise, walk } from "../../../support/walk";

const RIGHT: readonly PanelName[] = [
  "right contact",
  "right down",
  "right passing",
  "right up",
  "end",
];
const exact = (kind: Walk["kind"] = "plain") => walk({ precision: 0, kind });
const told = (judged: Walk): readonly Remark[] =>
  reviewWalk(judged, "life").remarks.filter(({ check }) => check === "symmetry");
const titled = (judged: Walk, title: string) =>
  told(judged).find((remark) => remark.title.startsWith(title));

/** The left foot's step shorter by so many leg lengths: the right foot stands nearer from its contact on. */
function shortened(by: number): Walk {
  const feet = (side: "left" | "right") =>
    (["ankle", "heel", "ball", "toe"] as const).map((part) => `${side}-${part}` as const);
  const moved = RIGHT.slice(0, 4).reduce((so, name) => push(so, name, feet("right"), -by), exact());
  return moved;
}

describe("the lengths of two steps", () => {
  it.each([
    [0.03, null], // 0.69 and 0.75 of a leg: 8.3 % apart
    [0.045, "may-show"], // 12.5 %
    [0.06, "shows"], // 16.7 %
  ])("shorter by %f of a leg answers %s", (by, level) => {
    expect(titled(shortened(by), "The two steps differ")?.level ?? null).toBe(level);
  });

  it("are told with the index, the panels and both feet", () => {
    const remark = titled(shortened(0.06), "The two steps differ");
    expect(remark?.measured.value).toBeCloseTo(0.12 / 0.72, 6);
    expect(remark).toMatchObject({
      panels: ["left contact", "right contact", "end"],
      measured: { unit: "share", plusMinus: 0 },
    });
    expect(remark?.why).toContain(
      "The left step is 66.0 % of a leg long, the right step is 78.0 % of a leg long: 16.7 % apart",
    );
  });
});

describe("a pose and its mirrored partner", () => {
  const { hips, lift: lifted, anglesDegrees } = neighbours.mirrored;

  it.each([
    [hips - 0.002, null],
    [hips + 0.002, "tidy"],
    [2 * hips + 0.003, "may-show"],
  ])("hips %f of a leg apart answer %s", (by, level) => {
    expect(titled(raise(exact(), "right up", by), "Hips stand")?.level ?? null).toBe(level);
  });

  it("names both panels, what differs and by how much", () => {
    expect(titled(raise(exact(), "right up", 0.08), "Hips stand")).toMatchObject({
      side: "right",
      panels: ["left up", "right up"],
      frames: [22, 34],
      spots: [
        { panel: "left up", joints: ["left-hip", "right-hip"] },
        { panel: "right up", joints: ["left-hip", "right-hip"] },
      ],
    });
  });

  it.each([
    [lifted - 0.002, null],
    [lifted + 0.002, "tidy"],
    [2 * lifted + 0.003, "may-show"],
  ])("swinging feet %f of a leg apart answer %s", (by, level) => {
    const foot = ["left-heel", "left-ball", "left-toe"] as const;
    expect(titled(lift(exact(), "right passing", foot, by), "Feet are")?.level ?? null).toBe(level);
  });

  it("has limits that captured pairs keep to", () => {
    const limits = METHODS.find(({ check }) => check === "symmetry")?.limits ?? [];
    for (const [limb, poses] of Object.entries(anglesDegrees)) {
      for (const [pose, most] of Object.entries(poses)) {
        const of = limits.filter((one) => one.of === `${limb} at ${pose}`);
        const degrees = of.map(({ value }) => (Number(value) * 180) / Math.PI);
        expect(degrees[1]).toBeGreaterThanOrEqual(most);
        expect(degrees[1]).toBeLessThan(most + 0.2); // rounded up to a tenth
        expect(degrees[0]).toBeCloseTo(2 * (degrees[1] ?? 0), 9);
      }
    }
  });

  it("bends its knees alike", () => {
    const bent = push(exact(), "right passing", ["right-knee"], 0.15);
    const remark = titled(bent, "Knees bend");
    expect(remark).toMatchObject({ level: "may-show", measured: { unit: "rad" } });
    expect(remark?.spots[1]?.joints).toEqual(["right-hip", "right-knee", "right-ankle"]);
    expect(remark?.spots[0]?.joints).toEqual(["left-hip", "left-knee", "left-ankle"]);
  });

  it("has an arm that holds a load left out", () => {
    const bent = push(exact(), "right passing", ["right-wrist"], 0.3);
    expect(titled(bent, "Elbows bend")).toBeDefined();
    const load = { x: 360, y: 400, precision: 0 };
    const panels = bent.panels.map((panel) => ({
      ...panel,
      marks: { ...panel.marks, side: { ...panel.marks.side, load } },
    }));
    expect(titled({ ...bent, panels }, "Elbows bend")).toBeUndefined();
  });

  it("is mirrored from the other step, on its own ground", () => {
    const bent = push(exact(), "right passing", ["right-knee"], 0.15);
    const remark = titled(bent, "Knees bend");
    const fix = remark === undefined ? null : fixFor(bent, remark);
    expect(fix?.title).toBe("Mirror the right passing from the other step");
    if (fix === null) return;
    const after = applyFix(bent, fix);
    expect(told(after)).toEqual([]);
    const heel = (judged: Walk) =>
      judged.panels.find(({ id }) => id === "right passing")?.marks.side["right-heel"]?.x;
    expect(heel(after)).toBeCloseTo(heel(bent) ?? Number.NaN, 1);
    expect(reviewWalk(after, "life").remarks).toEqual([]);
  });

  it("is not asked of a limp", () => {
    expect(told(raise(exact("limp"), "right up", 0.1))).toEqual([]);
  });
});
