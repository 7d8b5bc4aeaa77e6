import { existsSync } from "node:fs";
import { describe, expect, it } from "vitest";
import type { JointName } from "../../../../lib/body";
import { applyFix, type CheckId, fixFor, reviewWalk, type Walk } from "../../../../lib/gait";
import reference from "../../../reference/captured-strides.json";
import { capturedWalk } from "../../../support/captured";
import { CAPTURED_POSES, capturedClips } from "../../../support/captured-clips";
import { mirroredWalk } from "../../../support/mirrored-walk";
import { lift, push, raise, shift, unmark, walk, without } from "../../../support/walk";

const CHECKS = new Set<CheckId>(["hip-range", "limb-length", "reach", "knee", "views", "sides"]);

const found = (judged: Walk, check: CheckId) =>
  reviewWalk(judged, "trade").findings.filter((one) => one.check === check);
const remarks = (judged: Walk, check: CheckId) =>
  reviewWalk(judged, "trade").remarks.filter((one) => one.check === check);
const needs = (judged: Walk, check: CheckId) =>
  found(judged, check).flatMap((one) => (one.kind === "cannot-tell" ? [one.needs] : []));

const LEGS = ["hip", "knee", "ankle", "heel", "ball", "toe"] as const;

/** Left and right legs of a pose under each other's names in the side view. */
function swapped(from: Walk, name: string): Walk {
  const panels = from.panels.map((panel) => {
    if (panel.id !== name) return panel;
    const side = { ...panel.marks.side };
    for (const part of LEGS) {
      const [left, right] = [side[`left-${part}`], side[`right-${part}`]];
      if (left === undefined || right === undefined) throw new Error(`no ${part} on ${name}`);
      side[`left-${part}`] = right;
      side[`right-${part}`] = left;
    }
    return { ...panel, marks: { ...panel.marks, side } };
  });
  return { ...from, panels };
}

describe("limb lengths", () => {
  it("tell a thigh that grows, by how much and against what", () => {
    const [told] = remarks(push(walk(), "left passing", ["left-knee"], 0.25), "limb-length");
    expect(told).toMatchObject({ side: "left", panels: ["left passing"] });
    expect(told?.why).toContain("than on the stand");
  });

  it("take an arm laid across the body for no shorter where the front view shows its depth", () => {
    // 0.33 of a leg from shoulder to elbow: 0.2 of it aside leaves 0.262 to be seen from the side.
    const across = (from: Walk) =>
      lift(shift(from, "left up", ["left-elbow", "left-wrist"], -0.2), "left up", ARM, 0.0675);
    expect(remarks(across(walk({ precision: 0 })), "limb-length")).toEqual([]);
    const unseen = unmark(across(walk({ precision: 0 })), "left up", ARM, ["front"]);
    expect(remarks(unseen, "limb-length")).not.toEqual([]);
  });

  it("need legs that are marked, and say nothing of arms that are not", () => {
    const bare = unmark(walk(), "left up", ["left-ankle"]);
    const standless = without(bare, "stand");
    expect(needs(standless, "limb-length")).toEqual([
      "the left hip, knee and ankle marked in the side view",
    ]);
  });
});

const ARM: readonly JointName[] = ["left-elbow", "left-wrist"];

describe("knees", () => {
  // On the stand the knee lies half-way, 0.46 of a leg from hip and ankle.
  const bentBack = (degrees: number) =>
    push(
      walk({ precision: 0 }),
      "stand",
      ["left-knee"],
      -0.46 * Math.tan((degrees * Math.PI) / 360),
    );

  it("pass up to 5 degrees past straight, and are told beyond it", () => {
    expect(remarks(bentBack(4.9), "knee")).toEqual([]);
    expect(remarks(bentBack(5.1), "knee")).toMatchObject([
      { level: "shows", side: "left", panels: ["stand"], title: "Left knee bends back" },
    ]);
  });

  it("are mirrored where they bend back, and bones keep their lengths", () => {
    const back = push(walk({ precision: 0 }), "right up", ["left-knee"], -0.55);
    const [told] = remarks(back, "knee");
    const fix = told === undefined ? null : fixFor(back, told);
    expect(fix?.title).toBe("Bend the left knee forward");
    expect(remarks(applyFix(back, fix ?? { changes: [] }), "knee")).toEqual([]);
  });
});

describe("the hips' range", () => {
  it("names the poses where level hips were to sink and to rise", () => {
    const heights = { down: 0.02, passing: -0.02, up: -0.03 };
    const level = (["down", "passing", "up"] as const).reduce(
      (rest, pose) => raise(rest, `left ${pose}`, heights[pose]),
      walk({ precision: 0 }),
    );
    expect(remarks(level, "hip-range")).toMatchObject([
      { level: "shows", side: "left", panels: ["left down", "left up"] },
    ]);
  });

  it("needs the pose at the top", () => {
    const flat = without(without(walk(), "left passing"), "left up");
    expect(needs(flat, "hip-range")).toEqual(["the passing of the left step drawn"]);
  });

  it("is not judged in a sneak", () => {
    expect(found(walk({ kind: "sneak" }), "hip-range")).toEqual([]);
  });
});

describe("left and right", () => {
  const poses = ["left contact", "left down", "left passing", "left up", "right passing", "end"];

  it.each(poses)("are told where they change places at %s, and put back", (name) => {
    const wrong = swapped(walk(), name);
    const told = remarks(wrong, "sides");
    expect(told).toHaveLength(1);
    expect(told[0]?.panels).toContain(name);
    const fix = told[0] === undefined ? null : fixFor(wrong, told[0]);
    expect(applyFix(wrong, fix ?? { changes: [] }).panels).toEqual(walk().panels);
  });

  it("are told in each of two poses one after the other", () => {
    const wrong = swapped(swapped(walk(), "left passing"), "left up");
    expect(remarks(wrong, "sides").map(({ panels }) => panels.at(-1))).toEqual([
      "left passing",
      "left up",
    ]);
  });

  it("take a joint along that is marked on one side only", () => {
    const halfMarked = unmark(walk(), "left up", ["right-toe"], ["side"]);
    const full = walk().panels.find(({ id }) => id === "left up")?.marks.side["right-toe"];
    const exchange = {
      kind: "exchange-sides",
      panel: "left up",
      view: "side",
      joints: ["toe"],
    } as const;
    const after = applyFix(halfMarked, { changes: [exchange] });
    const marks = after.panels.find(({ id }) => id === "left up")?.marks.side;
    expect(full).toBeDefined();
    expect(marks?.["left-toe"]).toBeUndefined();
    expect(marks?.["right-toe"]).toEqual(
      walk().panels.find(({ id }) => id === "left up")?.marks.side["left-toe"],
    );
  });

  it("may both be the walk's own", () => {
    expect(remarks(mirroredWalk(walk()), "sides")).toEqual([]);
  });
});

describe("captured strides", () => {
  it.each(reference.walks)("draw no remark of limbs, views and names: $clip", (captured) => {
    const told = reviewWalk(capturedWalk(captured), "life").remarks;
    expect(told.filter(({ check }) => CHECKS.has(check)).map(({ why }) => why)).toEqual([]);
  });
});

describe.skipIf(!existsSync(CAPTURED_POSES))("every captured clip", () => {
  it("draws no remark of limbs, views and names, and of the hips' range only the jog", () => {
    for (const { clip, walk: captured } of capturedClips()) {
      const { findings } = reviewWalk(captured, "life");
      const told = findings.filter(({ check, kind }) => CHECKS.has(check) && kind !== "sound");
      const checks = [...new Set(told.map(({ check }) => check))];
      expect([clip, checks]).toEqual([clip, clip === "16_36" ? ["hip-range"] : []]);
    }
  });
});
