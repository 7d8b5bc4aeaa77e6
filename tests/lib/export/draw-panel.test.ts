import { describe, expect, it } from "vitest";
import { drawGround, drawMarks, drawRemarks, groundUnder, WHOLE_VIEW } from "../../../lib/export";
import { drawnSheet, reviewOf, slipped } from "./drawn-sheet";
import { recorder } from "./recorder";

/** Where the ticks of a ground line stand: page x, and whether they are the long ones. */
function ticks(place: number, legLength = 400) {
  const paper = recorder();
  drawGround(paper, { view: "side", stretch: { place, legLength }, pixel: 1 });
  const lines = paper.calls.matchAll(/M([\d.]+),1080 L[\d.]+,(108[5-9])/g);
  return [...lines].map(([, x, y]) => ({ x: Number(x), long: y === "1089" }));
}

describe("the ground under a panel", () => {
  it("carries a tick every quarter of a leg length, a longer one every whole", () => {
    expect(ticks(0).map(({ x }) => x)).toEqual([60, 160, 260, 360, 460, 560, 660]);
    expect(ticks(0).flatMap(({ x, long }) => (long ? [x] : []))).toEqual([360]);
  });

  it("slides back under the walker by as much as he has come", () => {
    const before = ticks(0).find(({ long }) => long)?.x ?? 0;
    const after = ticks(0.1).find(({ long }) => long)?.x ?? 0;
    expect(after - before).toBeCloseTo(-0.1 * 400, 6);
  });

  it("has no ticks from the front: there the ground does not pass sideways", () => {
    const paper = recorder();
    drawGround(paper, { view: "front", stretch: { place: 0, legLength: 400 }, pixel: 1 });
    expect(paper.calls.match(/stroke/g)).toHaveLength(1);
  });
});

describe("marks without a drawing and with one", () => {
  it("keep their size whatever the zoom", () => {
    const size = (pixel: number) => {
      const paper = recorder();
      drawMarks(paper, { "left-knee": { x: 0, y: 0, precision: 1 } }, pixel);
      return Number(/M([\d.]+),/.exec(paper.calls)?.[1]);
    };
    expect(size(3)).toBeCloseTo(3 * size(1), 6);
  });

  it("leave out a mark that is not made of numbers", () => {
    const paper = recorder();
    drawMarks(paper, { "left-knee": { x: Number.NaN, y: 0, precision: 1 } }, 1);
    expect(paper.calls).toBe("");
  });
});

describe("a slip on the drawing", () => {
  const sheet = drawnSheet(9, {
    change: (panel) =>
      panel.pose === "passing" && panel.weightOn === "right" ? slipped(panel, "right", 63) : panel,
  });
  const slip = reviewOf(sheet).remarks.find(({ check }) => check === "slide");
  const panel = sheet.panels.find(({ id }) => id === slip?.panels.at(-1));

  it("shows an arrow as long as the reading says, and the reading", () => {
    if (slip === undefined || panel === undefined) throw new Error("the slip was not remarked");
    const paper = recorder();
    drawRemarks(paper, {
      panel,
      view: "side",
      remarks: [{ remark: slip, key: 3 }],
      panels: sheet.panels,
      load: 0,
      stretchOf: groundUnder(sheet),
      window: WHOLE_VIEW,
      pixel: 1,
    });
    // The arrow runs level under the ground line; a leg is 420 panel units on the captured sheet.
    const [, from, to] = /M([\d.]+),1110 L([\d.]+),1110/.exec(paper.calls) ?? [];
    const { legLength } = groundUnder(sheet)(panel);
    expect((Number(to) - Number(from)) / legLength).toBeCloseTo(slip.measured.value, 3);
    expect(paper.calls).toContain(`"3: ${(100 * slip.measured.value).toFixed(1)} %"`);
  });
});
