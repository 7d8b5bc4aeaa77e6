import { describe, expect, it } from "vitest";
import { hipLine } from "../../../app/_charts/hip-line";
import { heightRange } from "../../../app/_charts/hip-scale";
import { tellExpected, tellHeight } from "../../../app/_charts/hip-words";
import { type Remark, reviewWalk, type Walk } from "../../../lib/gait";
import { raise, unmark, walk } from "../../support/walk";

const lineOf = (from: Walk) =>
  hipLine({
    review: reviewWalk(from, "trade"),
    xOfFrame: (frame) => 10 * frame,
    top: 10,
    bottom: 90,
  });

describe("the hip line", () => {
  it("has a dot a panel on the ruler's own frames", () => {
    const dots = lineOf(walk())?.dots ?? [];
    expect(dots.map(({ frame }) => frame)).toEqual([1, 13, 16, 19, 22, 25, 28, 31, 34, 37]);
    expect(dots.map(({ x }) => x)).toEqual(dots.map(({ frame }) => 10 * frame));
  });

  it("draws higher hips higher", () => {
    const dots = lineOf(walk())?.dots ?? [];
    const y = (panel: string) => dots.find((dot) => dot.panel === panel)?.y ?? Number.NaN;
    expect(y("left up")).toBeLessThan(y("left passing"));
    expect(y("left passing")).toBeLessThan(y("left contact"));
    expect(y("left contact")).toBeLessThan(y("left down"));
  });

  it("breaks where hips are not marked", () => {
    const line = lineOf(unmark(walk(), "left passing", ["left-hip", "right-hip"]));
    expect(line?.dots.length).toBe(9);
    expect(line?.runs.map((run) => run.length)).toEqual([3, 6]);
  });

  it("singles out the panel where a remark about hips is seen", () => {
    const dots = lineOf(raise(walk(), "left down", 0.06))?.dots ?? [];
    expect(dots.filter(({ remarked }) => remarked).map(({ panel }) => panel)).toEqual([
      "left down",
      "right down", // its mirrored partner, where the two are seen to differ
    ]);
  });

  it("marks both ends of a range, and a hitch between the panels where it is", () => {
    const { remarks, hipCurve } = reviewWalk(raise(walk(), "left down", 0.06), "trade");
    const [remark] = remarks;
    if (remark === undefined) throw new Error("a high down draws a remark");
    const hips = ["left-hip", "right-hip"] as const;
    const at = { panel: "left passing", view: "side" } as const;
    const spots = [{ ...at, joints: hips }];
    const range: Remark = { ...remark, check: "hip-range", panels: ["left down", "left up"] };
    const hitch: Remark = {
      ...remark,
      check: "hitch",
      panels: ["left down", "left passing"],
      spots,
    };
    const ofHand: Remark = { ...hitch, spots: [{ ...at, joints: ["left-wrist"] }] };
    const line = hipLine({
      review: { hipCurve, remarks: [range, hitch, ofHand] },
      ...{ xOfFrame: (frame: number) => 10 * frame, top: 0, bottom: 80 },
    });
    expect(line?.dots.filter(({ remarked }) => remarked).map(({ panel }) => panel)).toEqual([
      "left down",
      "left up",
    ]);
    expect(line?.hitches.map((ends) => ends.map(({ panel }) => panel))).toEqual([
      ["left down", "left passing"],
    ]);
  });

  it("keeps whiskers about the dot, as long as the ±", () => {
    const line = lineOf(walk({ precision: 0.02 }));
    const span = (line?.range.high ?? 0) - (line?.range.low ?? 0);
    for (const { y, top, bottom, plusMinus } of line?.dots ?? []) {
      expect(y - top).toBeCloseTo(bottom - y, 6);
      expect(bottom - top).toBeCloseTo((2 * plusMinus * 80) / span, 6);
    }
  });

  it("is not drawn before a hip is marked", () => {
    const drawn = walk();
    const panels = drawn.panels.map((panel) => ({ ...panel, marks: { side: {}, front: {} } }));
    expect(lineOf({ ...drawn, panels })).toBeNull();
  });

  it("lies within the chart, bands too", () => {
    const line = lineOf(walk());
    const heights = (line?.bands ?? []).flatMap((points) =>
      points.split(" ").map((point) => Number(point.split(",")[1])),
    );
    expect(heights.length).toBeGreaterThan(0);
    for (const height of heights) {
      expect(height).toBeGreaterThanOrEqual(10);
      expect(height).toBeLessThanOrEqual(90);
    }
  });
});

describe("the hip chart's scale", () => {
  it("does not blow up a steady walk", () => {
    const range = heightRange(reviewWalk(walk(), "trade").hipCurve.points.slice(1, 3));
    expect((range?.high ?? 0) - (range?.low ?? 0)).toBeCloseTo(0.08, 6);
  });
});

describe("the hip chart in words", () => {
  it("tells a height with its ±", () => {
    expect(tellHeight({ value: 0.93, plusMinus: 0.012 })).toBe("0.93 ± 0.01 leg");
    expect(tellHeight({ value: 0.93, plusMinus: 0 })).toBe("0.93 leg");
  });

  it("tells what is expected where something is", () => {
    const { bands } = reviewWalk(walk(), "trade").hipCurve;
    expect(tellExpected(bands, 16)).toBe("below 0.930 leg");
    expect(tellExpected(bands, 19)).toBe("0.930 to 0.960 leg");
    expect(tellExpected(bands, 1)).toBeNull();
  });
});
