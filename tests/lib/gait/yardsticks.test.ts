import { describe, expect, it } from "vitest";
import {
  applyFix,
  CHECK_IDS,
  type CheckId,
  type Finding,
  fixFor,
  METHODS,
  type Remark,
  reviewWalk,
  type Walk,
} from "../../../lib/gait";
import neighbours from "../../reference/neighbouring-steps.json";
import { carry } from "../../support/seeded/posed";
import { lift, push, raise, retime, unmark, walk, without } from "../../support/walk";

const STYLE: readonly CheckId[] = [
  "missing-pose",
  "pose-order",
  "hip-order",
  "hip-range",
  "weight-side",
  "weight-front",
  "foot-roll",
  "clearance",
  "gaps",
  "opposition",
  "tempo",
  "width",
];
const of = (findings: readonly Finding[], check: CheckId) =>
  findings.filter((finding) => finding.check === check);
const own = (judged: Walk, approved: readonly string[] = []) =>
  reviewWalk(judged, "this-walk", [], { approved });
const first = (remarks: readonly Remark[], check: CheckId) =>
  remarks.find((remark) => remark.check === check);

describe("by its own step", () => {
  it("a walk whose steps are alike has nothing to remark and leaves nothing untold", () => {
    const { remarks, cannotTell } = own(walk());
    expect(remarks).toEqual([]);
    expect(cannotTell).toEqual([]);
  });

  it("says where the other step breaks it, with both numbers", () => {
    const remark = first(own(raise(walk(), "right down", 0.045)).remarks, "hip-order");
    expect(remark).toMatchObject({
      level: "shows",
      yardstick: "this-walk",
      side: "right",
      panels: ["right contact", "right down"],
      title: "Right step: the hips at the down not as in the step it goes by",
    });
    expect(remark?.measured.value).toBeCloseTo(0.025, 6);
    expect(remark?.expected.value).toBeCloseTo(-0.02, 6);
    expect(remark?.why).toContain("the hips at the down stand over the contact's by: 2.5 ±");
    expect(remark?.why).toContain(
      "In the left step, which it goes by, the hips at the down lie under the contact's by: 2.0 ±",
    );
    expect(remark?.why).toContain("so they are 4.5 ± 0.7 % of a leg apart");
  });

  it("says of two readings that both go the other way which goes further, without a sign", () => {
    const lower = first(own(raise(walk(), "right down", -0.04)).remarks, "hip-order");
    expect(lower?.why).toMatch(
      /lie under the contact's by: 6\.0 ± .* In the left step, which it goes by: 2\.0 ± .* so it is 4\.0 ± 0\.7 % of a leg more here/,
    );
    expect(lower?.why).not.toContain("−");
  });

  it("takes what breaks the trade's order as it is where both steps do", () => {
    const high = { up: 0.04 };
    const even = carry(carry(walk(), "left down", high), "right down", high);
    expect(first(reviewWalk(even, "trade").remarks, "hip-order")).toBeDefined();
    expect(own(even).remarks).toEqual([]);
  });

  it("goes by the step that was approved first, and else by the first complete one", () => {
    const odd = raise(walk(), "left down", 0.04);
    const right = ["right contact", "right down", "right passing", "right up"];
    expect(first(own(odd).remarks, "hip-order")?.side).toBe("right");
    expect(first(own(odd, right).remarks, "hip-order")?.side).toBe("left");
    expect(first(own(odd, right.slice(1)).remarks, "hip-order")?.side).toBe("right");
    expect(first(own(without(odd, "left down")).remarks, "missing-pose")?.side).toBe("left");
  });

  it.each(STYLE)("%s needs one complete step to go by", (check) => {
    const bare = without(without(walk(), "left down"), "right down");
    expect(of(own(bare).findings, check)).toEqual(
      expect.arrayContaining([
        expect.objectContaining({
          kind: "cannot-tell",
          needs: expect.stringContaining("one complete step to go by"),
        }),
      ]),
    );
  });

  it("judges what no style excuses as the other yardsticks do", () => {
    const slipped = push(walk(), "left passing", ["left-heel", "left-ball", "left-toe"], 0.1);
    const by = (yardstick: "trade" | "this-walk") =>
      of(reviewWalk(slipped, yardstick).findings, "slide").map((finding) => ({
        ...finding,
        yardstick: null,
      }));
    expect(by("this-walk")).toEqual(by("trade"));
    expect(first(own(slipped).remarks, "slide")).toBeDefined();
  });

  it.each<[CheckId, Walk]>([
    ["hip-order", raise(walk(), "right up", 0.05)],
    ["hip-range", carry(walk(), "right down", { up: -0.05 })],
    ["foot-roll", lift(walk(), "right contact", ["right-toe"], -0.06)],
    ["gaps", retime(walk({ frames: { left: 24, right: 24 } }), "right passing", 54)],
    ["missing-pose", without(walk(), "right up")],
    ["clearance", lift(walk(), "right passing", ["left-heel", "left-ball", "left-toe"], 0.06)],
    ["opposition", push(walk(), "right contact", ["left-wrist"], 0.25)],
  ])("names the step that differs in %s", (check, judged) => {
    expect(first(own(judged).remarks, check)).toMatchObject({
      side: "right",
      yardstick: "this-walk",
    });
  });

  it("needs what either step lacks", () => {
    const blind = unmark(walk(), "left passing", ["left-hip", "right-hip"]);
    const needs = of(own(blind).findings, "hip-order").map((one) =>
      one.kind === "cannot-tell" ? one.needs : one.kind,
    );
    expect(needs).toContain(
      "the hips marked at the passing of the left step, in the step it goes by",
    );
  });

  it("holds a limp's steps against the one on the same foot", () => {
    const uneven = carry(walk(), "right down", { up: 0.035 }); // the down stays under its passing
    expect(own(uneven).remarks.length).toBeGreaterThan(0);
    expect(own({ ...uneven, kind: "limp" }).remarks).toEqual([]);
  });

  it("expects the pattern's frames in the row of gaps, and its heights on the chart", () => {
    const late = retime(walk(), "right passing", 33);
    const { gapRow, hipCurve } = own(late);
    const cell = gapRow.find(({ to }) => to === "right passing");
    expect(cell).toMatchObject({ frames: 5, expected: 3 });
    expect(hipCurve.bands.map(({ weightOn }) => weightOn)).toEqual(["right"]);
  });
});

describe("by a version", () => {
  const by = (judged: Walk, version?: Walk) =>
    reviewWalk(judged, "version", [], version === undefined ? {} : { version });

  it("a walk is held against the other's steps, side by side", () => {
    expect(by(walk(), walk()).remarks).toEqual([]);
    const high = raise(walk(), "right down", 0.04);
    expect(by(high, high).remarks.filter(({ check }) => check === "hip-order")).toEqual([]);
    const remark = first(by(high, walk()).remarks, "hip-order");
    expect(remark).toMatchObject({
      side: "right",
      title: "Right step: the hips at the down not as in the step it goes by",
    });
    expect(remark?.why).toContain("In the right step of the walk it goes by");
  });

  it("needs the other walk, and a complete step of it", () => {
    const needs = (version?: Walk) => by(walk(), version).cannotTell.map((one) => one.needs);
    expect(needs()).toContain("another walk to go by");
    expect(needs({ ...walk(), panels: [] }).join()).toContain(
      "one complete step in the walk to go by",
    );
  });

  it("finds its fix by the same version", () => {
    const bare = without(walk(), "right up");
    const against = { version: walk() };
    const { remarks } = reviewWalk(bare, "version", [], against);
    const remark = first(remarks, "missing-pose");
    const fix = remark === undefined ? null : fixFor(bare, remark, against);
    expect(fix?.title).toContain("Add an up");
    if (fix === null) return;
    const after = reviewWalk(applyFix(bare, fix), "version", [], against).remarks;
    expect(first(after, "missing-pose")).toBeUndefined();
  });
});

describe("how near passes as the same", () => {
  const limit = (check: CheckId, of: string, level: string): number => {
    const method = METHODS.find((one) => one.check === check);
    const found = method?.limits.find(
      (one) => one.of.startsWith(of) && one.level === level && one.yardsticks.includes("version"),
    );
    return typeof found?.value === "number" ? found.value : Number.NaN;
  };

  it.each(neighbours.rows)(
    "is what captured neighbours keep to: $check, $of",
    ({ check, of, p95, most, step }) => {
      const id = CHECK_IDS.find((one) => one === check);
      if (id === undefined) throw new Error(`no check ${check}`);
      // Limits are rounded up to a tenth of a percent, or half a degree; see the rows' own step.
      expect(limit(id, of, "may-show")).toBeGreaterThanOrEqual(p95 - step);
      expect(limit(id, of, "may-show")).toBeLessThanOrEqual(p95 + step);
      expect(limit(id, of, "shows")).toBeGreaterThanOrEqual(most - step);
      expect(limit(id, of, "shows")).toBeLessThanOrEqual(most + step);
    },
  );
});
