import { describe, expect, it } from "vitest";
import type { JointName, Side } from "../../../../lib/body";
import { type CheckId, type Finding, reviewWalk, type Walk } from "../../../../lib/gait";
import { lift, placedTo, unmark, walk, withPanel } from "../../../support/walk";

const foot = (side: Side) =>
  (["ankle", "heel", "ball", "toe"] as const).map((part): JointName => `${side}-${part}`);
const found = (judged: Walk, check: CheckId): Finding[] =>
  reviewWalk(judged, "trade").findings.filter((one) => one.check === check);
const remarks = (judged: Walk, check: CheckId) =>
  found(judged, check).filter((one) => one.kind === "remark");

describe("a floating foot", () => {
  it("is the one that carries, by its lowest mark", () => {
    const [only, ...others] = remarks(lift(walk(), "left passing", foot("left"), 0.05), "float");
    expect(others).toEqual([]);
    expect(only).toMatchObject({
      level: "shows",
      side: "left",
      panels: ["left passing"],
      title: "Left foot floats",
      spots: [{ panel: "left passing", view: "side", joints: ["left-heel"] }],
      expected: { value: 0.02, unit: "leg" },
    });
    expect(only?.why).toContain("is 5.0 ± 0.5 % of a leg above the ground; up to 2.0 % passes");
  });

  it("is asked of both feet at the stand and at a contact, of no swinging one", () => {
    const sides = (panel: string) =>
      found(walk(), "float")
        .filter(({ panels }) => panels[0] === panel)
        .map(({ side }) => side);
    expect(sides("stand")).toEqual(["left", "right"]);
    expect(sides("right contact")).toEqual(["left", "right"]);
    expect(sides("right passing")).toEqual(["right"]);
  });

  it("stands on its toe while the heel is up", () => {
    expect(remarks(lift(walk(), "left up", ["left-heel"], 0.1), "float")).toEqual([]);
  });

  it("cannot be told by the heel alone, nor while nobody said whose weight it is", () => {
    const open = unmark(walk(), "left down", ["left-ball", "left-toe"]);
    expect(found(open, "float").find(({ kind }) => kind === "cannot-tell")).toMatchObject({
      side: "left",
      panels: ["left down"],
      needs: "the left heel and ball or toe marked in the side view",
    });
    const unsaid = withPanel(walk(), "left down", { weightOn: null });
    expect(found(unsaid, "float").find(({ kind }) => kind === "cannot-tell")).toMatchObject({
      needs: "to know whose weight the step carries",
    });
  });

  it("is judged in a free walk too", () => {
    const free = walk({ kind: "free" });
    expect(remarks(lift(free, "left passing", foot("left"), 0.05), "float")).toHaveLength(1);
    expect(remarks(lift(free, "left passing", foot("left"), -0.05), "sink")).toHaveLength(1);
  });
});

describe("a sinking foot", () => {
  it("is either foot, by its deepest mark", () => {
    const [only] = remarks(lift(walk(), "left passing", foot("right"), -0.18), "sink");
    expect(only).toMatchObject({ side: "right", panels: ["left passing"], level: "shows" });
    expect(only?.measured.value).toBeCloseTo(0.06, 9);
    expect(only?.why).toContain("is 6.0 ± 0.5 % of a leg under the ground");
  });

  it("may push its tip a little deeper while it peels, being drawn stiff", () => {
    const peeling = lift(walk(), "left up", ["left-heel"], 0.1);
    expect(remarks(lift(peeling, "left up", ["left-toe"], -0.032), "sink")).toEqual([]);
    expect(remarks(lift(walk(), "left up", foot("left"), -0.032), "sink")).toHaveLength(1);
    const deep = remarks(lift(peeling, "left up", ["left-toe"], -0.05), "sink");
    expect(deep[0]).toMatchObject({ expected: { value: 0.03 } });
  });

  it("is named by one mark under the ground, and cannot be cleared by one above it", () => {
    const open = unmark(walk(), "left down", ["left-ball", "left-toe"]);
    expect(remarks(lift(open, "left down", ["left-heel"], -0.05), "sink")).toHaveLength(1);
    expect(found(open, "sink").filter(({ kind }) => kind === "cannot-tell")).toHaveLength(1);
  });
});

describe("the roll of the foot", () => {
  it("is sound heel first, flat, and off by the toe: four answers a step by trade", () => {
    expect(found(walk(), "foot-roll").map(({ kind }) => kind)).toEqual(Array(8).fill("sound"));
    const life = reviewWalk(walk(), "life").findings.filter(({ check }) => check === "foot-roll");
    expect(life).toHaveLength(6);
  });

  it("names a flat landing even by pencil", () => {
    const flat = lift(
      lift(walk(), "left contact", ["left-toe"], -0.1),
      "left contact",
      ["left-ball"],
      -0.07,
    );
    expect(remarks(flat, "foot-roll")[0]).toMatchObject({
      level: "may-show",
      side: "left",
      panels: ["left contact"],
      title: "Left foot does not land on its heel",
      spots: [{ panel: "left contact", view: "side", joints: ["left-heel", "left-toe"] }],
    });
  });

  it("tells a pitch in degrees", () => {
    const pitched = lift(walk(), "right passing", ["right-ball", "right-toe"], 0.06);
    const [only] = remarks(pitched, "foot-roll");
    expect(only).toMatchObject({ title: "Right foot is not flat at the passing" });
    expect(only?.why).toContain("pitches 18 ± 2°, toe up; up to 10° passes as flat");
  });

  it("names the pose where the toe leaves before the heel", () => {
    const pulled = lift(walk(), "left up", ["left-ball", "left-toe"], 0.06);
    expect(remarks(pulled, "foot-roll")).toMatchObject([
      { title: "Left foot leaves toe first", panels: ["left up"] },
    ]);
    const late = lift(walk(), "right contact", ["left-ball", "left-toe"], 0.12);
    expect(remarks(late, "foot-roll")).toMatchObject([
      { title: "Left foot leaves toe first", panels: ["right contact"] },
    ]);
  });

  it("names the pose where it surely leaves first, not one that was marked too vaguely to say", () => {
    const toe = ["left-ball", "left-toe"] as const;
    const pulled = lift(lift(walk(), "left up", toe, 0.06), "right contact", toe, 0.16);
    const vague = placedTo(pulled, "right contact", toe, 0.1);
    expect(remarks(vague, "foot-roll")).toMatchObject([
      { title: "Left foot leaves toe first", panels: ["left up"] },
    ]);
  });

  it.each(["sneak", "child", "free"] as const)("is not judged in a %s walk", (kind) => {
    expect(found(walk({ kind }), "foot-roll")).toEqual([]);
  });

  it("cannot tell without the foot's marks", () => {
    const open = unmark(walk(), "left contact", ["left-heel"]);
    expect(found(open, "foot-roll").find(({ kind }) => kind === "cannot-tell")).toMatchObject({
      panels: ["left contact"],
      needs: "the left heel and ball or toe marked in the side view",
    });
  });
});
