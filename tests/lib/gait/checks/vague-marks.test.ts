import { describe, expect, it } from "vitest";
import type { ViewMarks } from "../../../../lib/body";
import { type CheckId, COMMON_YARDSTICKS, reviewWalk, type Walk } from "../../../../lib/gait";
import { push, raise, unmark, walk } from "../../../support/walk";

const answers = (judged: Walk, check: CheckId, yardstick: "trade" | "life" = "trade") =>
  reviewWalk(judged, yardstick).findings.filter((finding) => finding.check === check);
const kinds = (judged: Walk, check: CheckId, yardstick: "trade" | "life" = "trade") => [
  ...new Set(answers(judged, check, yardstick).map(({ kind }) => kind)),
];
const needs = (judged: Walk, check: CheckId) =>
  answers(judged, check).map((one) => (one.kind === "cannot-tell" ? one.needs : one.kind));

/** The built walk with every mark of its poses this vague (panel units); its stand stays exact. */
function vague(units: number, from = walk({ precision: 0 })): Walk {
  const blur = (marks: ViewMarks): ViewMarks =>
    Object.fromEntries(
      Object.entries(marks).map(([joint, mark]) => [joint, { ...mark, precision: units }]),
    );
  return {
    ...from,
    panels: from.panels.map((panel) =>
      panel.pose === "stand"
        ? panel
        : { ...panel, marks: { side: blur(panel.marks.side), front: blur(panel.marks.front) } },
    ),
  };
}

describe.each(COMMON_YARDSTICKS)("marks that may lie anywhere, by %s", (yardstick) => {
  it.each(["slide", "hip-order"] as const)("leave %s untold", (check) => {
    expect(kinds(vague(400), check, yardstick)).toEqual(["cannot-tell"]);
  });

  it.each(["slide", "hip-order"] as const)("at the strip's coarsest still tell %s", (check) => {
    expect(kinds(walk({ precision: 0.03 }), check, yardstick)).toEqual(["sound"]);
  });
});

describe("a foot that stays", () => {
  it("is called so while a slip of twice the limit would be seen, and no longer", () => {
    // Two marks' root-sum-square against 5 % of a leg of 420 units: 0.05 × 420 / √2 = 14.85 a mark.
    expect(kinds(vague(14.8), "slide")).toEqual(["sound"]);
    expect(new Set(needs(vague(14.9), "slide"))).toEqual(
      new Set(
        ["left", "right"].flatMap((side) =>
          ["ball", "heel"].map((joint) => `the ${side} ${joint} marked more exactly`),
        ),
      ),
    );
    const slipped = vague(
      14.8,
      push(walk({ precision: 0 }), "left passing", ["left-ball"], 0.1001),
    );
    expect(kinds(slipped, "slide")).toContain("remark");
  });
});

describe("hips in order", () => {
  it("are called so by one hip at the strip's coarsest", () => {
    const names = ["left", "right"].flatMap((side) =>
      ["contact", "down", "passing", "up"].map((pose) => `${side} ${pose}` as const),
    );
    const oneHip = names.reduce(
      (rest, name) => unmark(rest, name as Parameters<typeof unmark>[1], ["right-hip"]),
      walk({ precision: 0.03 }),
    );
    expect(kinds(oneHip, "hip-order")).toEqual(["sound"]);
  });

  it("name the poses whose hips are too vague", () => {
    const fromTheSide = (judged: Walk): Walk => ({
      ...judged,
      panels: judged.panels.map((panel) => ({ ...panel, marks: { ...panel.marks, front: {} } })),
    });
    // Both hips of two poses: ± of the difference is a mark's own, against 5.7 % of a leg of 420 units.
    expect(kinds(fromTheSide(vague(23.9)), "hip-order")).toEqual(["sound"]);
    expect(needs(fromTheSide(vague(24)), "hip-order")[0]).toBe(
      "the hips marked more exactly at the contact, down, passing and up of the left step",
    );
  });

  it("are in order however vague, where they are by more than that", () => {
    const high = ["left passing", "right passing"] as const;
    const apart = high.reduce((rest, name) => raise(rest, name, 0.3), walk({ precision: 0 }));
    const told = answers(vague(40, apart), "hip-order", "life");
    expect(told.map((one) => (one.kind === "cannot-tell" ? one.needs : one.kind))).toEqual([
      "the hips marked more exactly at the contact and down of the left step",
      "the hips marked more exactly at the contact and down of the right step",
    ]);
  });
});
