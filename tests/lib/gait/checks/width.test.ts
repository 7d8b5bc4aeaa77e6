import { existsSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { applyFix, type Finding, fixFor, reviewWalk, type Walk } from "../../../../lib/gait";
import { CAPTURED_POSES, capturedClips } from "../../../support/captured-clips";
import { shift, unmark, walk } from "../../../support/walk";

const FOOT = ["ankle", "heel", "ball", "toe"] as const;
const found = (judged: Walk): readonly Finding[] =>
  reviewWalk(judged, "trade").findings.filter(({ check }) => check === "width");
const remark = (judged: Walk) => {
  const one = found(judged).find(({ kind }) => kind === "remark");
  return one?.kind === "remark" ? one : null;
};

/** Both feet of every pose so far apart instead of the built 0.11. */
function wide(legs: number, kind: Walk["kind"] = "plain"): Walk {
  const by = (legs - 0.11) / 2;
  return walk({ kind })
    .panels.map(({ id }) => id)
    .reduce(
      (changed, id) =>
        (["left", "right"] as const).reduce(
          (one, side) =>
            shift(
              one,
              id as "end",
              FOOT.map((part) => `${side}-${part}` as const),
              side === "right" ? by : -by,
            ),
          changed,
        ),
      walk({ kind }),
    );
}

describe("the step's width", () => {
  it("is sound at 0.11 of a leg, and reads so", () => {
    expect(found(walk()).map(({ kind }) => kind)).toEqual(["sound", "sound"]);
    const [step] = reviewWalk(walk(), "trade").stepReadings;
    expect(step?.width.kind === "value" && step.width.value).toBeCloseTo(0.11, 9);
  });

  it("names feet far apart at the contact that ends the step, and points at both", () => {
    expect(remark(wide(0.4))).toMatchObject({
      level: "may-show",
      side: "left",
      panels: ["right contact"],
      spots: [{ panel: "right contact", view: "front", joints: ["left-ankle", "right-ankle"] }],
      title: "Feet far apart",
      why: expect.stringContaining(
        "are 40.0 ± 0.7 % of a leg apart across the walk; 2 to 25 % passes",
      ),
    });
  });

  it("points at both passings where the contact between them is not marked", () => {
    const both = FOOT.flatMap((part) => [`left-${part}`, `right-${part}`] as const);
    expect(remark(unmark(wide(0.4), "right contact", both))).toMatchObject({
      panels: ["left passing", "right passing"],
      spots: [{ joints: ["left-ankle"] }, { joints: ["right-ankle"] }],
    });
  });

  it("names feet that cross, with the sign", () => {
    const crossed = remark(wide(-0.1));
    expect(crossed).toMatchObject({ title: "Feet cross", expected: { value: 0.02 } });
    expect(crossed?.measured.value).toBeCloseTo(-0.1, 9);
    expect(crossed?.why).toContain("cross by 10.0 ± 0.7 % of a leg across the walk");
  });

  it("passes just within its limits, and remarks just beyond by more than the marks' precision", () => {
    for (const legs of [0.021, 0.249]) expect(remark(wide(legs))).toBeNull();
    for (const legs of [0.012, 0.258]) expect(remark(wide(legs))).not.toBeNull();
  });

  it.each([0.4, 0.6, -0.1])(
    "is set right by its fix at %s of a leg, and no drawing shows worse",
    (legs) => {
      const before = wide(legs);
      const one = remark(before);
      const fix = one === null ? null : fixFor(before, one);
      expect(fix).not.toBeNull();
      const after = reviewWalk(applyFix(before, fix ?? { changes: [] }), "trade");
      expect(
        after.remarks.filter(({ check, side }) => check === "width" && side === "left"),
      ).toEqual([]);
      expect(after.remarks.filter(({ level }) => level === "shows")).toEqual([]);
    },
  );

  it("cannot tell from the side view alone", () => {
    const blind = walk().panels.reduce(
      (changed, { id }) =>
        unmark(
          changed,
          id as "end",
          FOOT.flatMap((part) => [`left-${part}`, `right-${part}`] as const),
          ["front"],
        ),
      walk(),
    );
    expect(found(blind)[0]).toMatchObject({
      kind: "cannot-tell",
      needs: "the landing foot marked at both contacts, in the front view",
    });
  });

  it("is not judged in a child's walk, which says so once", () => {
    expect(found(wide(0.4, "child"))).toEqual([]);
    expect(reviewWalk(wide(0.4, "child"), "trade").quieted.map(({ check }) => check)).toContain(
      "width",
    );
  });
});

describe.skipIf(!existsSync(CAPTURED_POSES))("widths of every captured clip", () => {
  it("trip at most as often as published: 1.3 % of all steps, here of 30", () => {
    const told = capturedClips().flatMap(({ walk: clip }) => found(clip));
    const tripped = told.filter(({ kind }) => kind === "remark").length;
    expect(told.length).toBeGreaterThanOrEqual(30);
    expect(tripped / told.length).toBeLessThanOrEqual(1 / 30);
  });
});
