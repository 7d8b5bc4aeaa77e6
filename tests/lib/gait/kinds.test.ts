import { describe, expect, it } from "vitest";
import { CHECK_IDS, type CheckId, reviewWalk, type Walk, type WalkKind } from "../../../lib/gait";
import { carry } from "../../support/seeded/posed";
import { lift, type PanelName, push, raise, shift, walk, without } from "../../support/walk";

const PANELS = walk().panels.map(({ id }) => id as PanelName);
const FEET = (["ankle", "heel", "ball", "toe"] as const).map((part) => `right-${part}` as const);

/** A fault of a plain walk that some kind of walk means. */
const FAULTS: Partial<Record<CheckId, Walk>> = {
  "missing-pose": without(walk(), "left up"),
  "pose-order": relabelled(),
  "hip-order": raise(walk(), "left up", -0.05),
  "weight-side": push(walk(), "left passing", ["left-hip", "right-hip"], 0.2),
  "weight-front": shift(walk(), "left passing", ["left-hip", "right-hip"], 0.2),
  "foot-roll": lift(walk(), "left contact", ["left-toe"], -0.11),
  gaps: walk({ frames: { left: 10, right: 16 } }),
  symmetry: raise(walk({ precision: 0 }), "right up", 0.08),
  opposition: push(walk(), "left contact", ["left-wrist"], 0.3),
  tempo: { ...walk(), advance: 0.1 },
  width: PANELS.reduce((so, name) => shift(so, name, FEET, 0.3), walk()),
};

const MEANT: readonly (readonly [WalkKind, readonly CheckId[]])[] = [
  ["heavy", ["missing-pose", "hip-order", "weight-side"]],
  ["limp", ["gaps", "symmetry"]],
  ["sneak", ["foot-roll", "tempo"]],
  ["child", ["foot-roll", "opposition", "width"]],
  ["double-bounce", ["hip-order"]],
  ["march", ["tempo"]],
  ["free", Object.keys(FAULTS) as CheckId[]],
];
const CASES = MEANT.flatMap(([kind, checks]) => checks.map((check) => [check, kind] as const));

describe.each(CASES)("%s in a %s", (check, kind) => {
  const faulty = FAULTS[check] ?? walk();
  const remarks = (of: WalkKind) =>
    reviewWalk({ ...faulty, kind: of }, "trade").remarks.filter((one) => one.check === check);

  it("is meant: it is silent, and said once", () => {
    expect(remarks(kind)).toEqual([]);
    const { quieted } = reviewWalk({ ...faulty, kind }, "trade");
    expect(quieted.filter((one) => one.check === check)).toHaveLength(1);
  });

  it("is remarked in a plain walk", () => {
    expect(remarks("plain").length).toBeGreaterThan(0);
  });
});

describe("a free walk", () => {
  it("is judged by what slides, floats, sinks, changes its limbs or does not loop, and by nothing else", () => {
    const judged: readonly CheckId[] = ["slide", "float", "sink", "limb-length", "reach", "loop"];
    const { quieted, findings } = reviewWalk({ ...walk(), kind: "free" }, "trade");
    const quiet = new Set(quieted.map(({ check }) => check));
    expect(CHECK_IDS.filter((check) => !quiet.has(check))).toEqual(
      CHECK_IDS.filter((check) => judged.includes(check)),
    );
    for (const { check } of findings) expect(judged).toContain(check);
  });
});

describe("a double bounce", () => {
  it("has an order of heights of its own, which its own step is the rule of", () => {
    const bounce = walk({ kind: "double-bounce" });
    const low = { up: -0.06 };
    const even = carry(carry(bounce, "left up", low), "right up", low);
    expect(reviewWalk(even, "this-walk").remarks).toEqual([]);
    const once = raise(even, "right passing", -0.06);
    const { remarks, quieted } = reviewWalk(once, "this-walk");
    expect(remarks.map(({ check }) => check)).toContain("hip-order");
    expect(quieted.map(({ check }) => check)).not.toContain("hip-order");
  });
});

/** The left down and passing with each other's labels. */
function relabelled(): Walk {
  const panels = walk().panels.map((panel) => {
    if (panel.id === "left down") return { ...panel, pose: "passing" as const };
    return panel.id === "left passing" ? { ...panel, pose: "down" as const } : panel;
  });
  return { ...walk(), panels };
}
