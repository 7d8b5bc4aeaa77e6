import { describe, expect, it } from "vitest";
import { type Finding, reviewWalk, type Walk, type Yardstick } from "../../../../lib/gait";
import { raise, unmark, walk, without } from "../../../support/walk";

const hips = ["left-hip", "right-hip"] as const;
const hipOrder = (judged: Walk, yardstick: Yardstick): Finding[] =>
  reviewWalk(judged, yardstick).findings.filter(({ check }) => check === "hip-order");
/** The right step's down 4 % over its contact, the poses after it higher still. */
const light = () =>
  raise(raise(raise(walk(), "right down", 0.06), "right passing", 0.05), "right up", 0.05);
const kinds = (judged: Walk, yardstick: Yardstick) =>
  hipOrder(judged, yardstick).map(({ kind, side }) => `${side} ${kind}`);

describe.each(["trade", "life"] as const)("hip order by %s", (yardstick) => {
  it("is sound on both steps of a plain walk", () => {
    expect(kinds(walk(), yardstick)).toEqual(["left sound", "right sound"]);
  });

  it("names the step whose down stands over its contact", () => {
    const [, found] = hipOrder(light(), yardstick);
    expect(found).toMatchObject({
      kind: "remark",
      level: "shows",
      side: "right",
      panels: ["right contact", "right down"],
      title: "Right step reads light",
      yardstick,
    });
    const value = found?.kind === "remark" ? found.measured.value : Number.NaN;
    expect(value).toBeCloseTo(0.04, 9);
  });

  it("tells both numbers, their uncertainty and the other side's", () => {
    const [, found] = hipOrder(light(), yardstick);
    const why = found?.kind === "remark" ? found.why : "";
    expect(why).toContain("stand 4.0 ± 0.4 % of a leg above the contact");
    expect(why).toContain("On the left step they lie 2.0 ± 0.4 % of a leg below it.");
  });

  it("names a passing that dips below its contact", () => {
    const found = hipOrder(raise(walk(), "left passing", -0.035), yardstick);
    expect(found[0]).toMatchObject({
      kind: "remark",
      side: "left",
      panels: ["left contact", "left passing"],
      spots: [
        { panel: "left contact", view: "side", joints: [...hips] },
        { panel: "left passing", view: "side", joints: [...hips] },
      ],
    });
  });

  it("cannot tell without the hips of a pose, and says which", () => {
    const [left, right] = hipOrder(unmark(walk(), "left passing", hips), yardstick);
    expect(left).toMatchObject({
      kind: "cannot-tell",
      side: "left",
      needs: "the hips marked at the passing of the left step",
    });
    expect(right?.kind).toBe("sound");
  });

  it("cannot tell without the pose itself", () => {
    const [left] = hipOrder(without(walk(), "left down"), yardstick);
    expect(left).toMatchObject({ kind: "cannot-tell", needs: "the down of the left step drawn" });
  });

  it("cannot tell without a leg to measure in", () => {
    const bare = walk();
    const panels = bare.panels.map((panel) => ({ ...panel, marks: { side: {}, front: {} } }));
    expect(hipOrder({ ...bare, panels }, yardstick)[0]).toMatchObject({
      kind: "cannot-tell",
      needs: "a hip, knee and ankle or heel of one leg marked in a side view",
    });
  });

  it("cannot tell on an empty strip", () => {
    expect(kinds({ ...walk(), panels: [] }, yardstick)).toEqual(["null cannot-tell"]);
  });

  it("does not take a mark that is no number for a sound one", () => {
    expect(kinds(raise(walk(), "left down", Number.NaN), yardstick)[0]).toBe("left cannot-tell");
  });

  it("widens its uncertainty when one hip alone is marked", () => {
    const raised = raise(walk(), "right down", 0.031);
    const poses = ["right contact", "right down", "right passing", "right up"] as const;
    const near = poses.reduce((seen, name) => unmark(seen, name, ["left-hip"]), raised);
    // 1.1 % over the contact is told of the middle of two hips, ± 0.5 %; of one hip it is ± 1.2 %.
    const [, one] = hipOrder(near, "trade");
    expect(one?.kind).toBe("sound");
    const [, both] = hipOrder(raised, "trade");
    expect(both?.kind).toBe("remark");
  });
});

describe("hip order", () => {
  it("asks the trade's up to be higher than passing, and not life's", () => {
    const flat = raise(walk(), "left up", -0.03);
    expect(kinds(flat, "trade")).toEqual(["left remark", "right sound"]);
    expect(kinds(flat, "life")).toEqual(["left sound", "right sound"]);
  });

  it("asks for the up's hips in the trade alone", () => {
    const open = unmark(walk(), "left up", hips);
    expect(kinds(open, "trade")[0]).toBe("left cannot-tell");
    expect(kinds(open, "life")[0]).toBe("left sound");
  });

  it("says of a heavy walk once that its up is not judged", () => {
    const heavy = raise(walk({ kind: "heavy" }), "left up", -0.03);
    expect(kinds(heavy, "trade")).toEqual(["left sound", "right sound"]);
    const { quieted } = reviewWalk(heavy, "trade");
    expect(quieted.filter(({ check }) => check === "hip-order")).toEqual([
      { check: "hip-order", topic: "hip-order:up", why: "a heavy walk need not rise to its up" },
    ]);
  });

  it.each(["free", "double-bounce"] as const)("is silent on a %s walk, and says so", (kind) => {
    const review = reviewWalk(raise(walk({ kind }), "left down", 0.1), "trade");
    expect(review.findings.some(({ check }) => check === "hip-order")).toBe(false);
    expect(review.quieted.map(({ topic }) => topic)).toContain("hip-order");
  });

  it("says nothing of exact heights that read as equal", () => {
    const even = raise(walk({ precision: 0 }), "left down", 0.0204); // 0.04 % over the contact
    expect(kinds(even, "trade")[0]).toBe("left sound");
  });
});
