import { describe, expect, it } from "vitest";
import { expectedOutlines } from "../../../app/_charts/expected-outlines";
import { heightRules } from "../../../app/_charts/hip-scale";
import type { BandPoint } from "../../../lib/gait";

const EDGES = { y: (height: number) => 100 - 100 * height, top: 5, bottom: 95 };
const outlines = (points: readonly BandPoint[]) =>
  expectedOutlines(points, (frame) => 10 * frame, EDGES).map((outline) =>
    outline.split(" ").map((corner) => corner.split(",").map(Number)),
  );
const spanOf = (outline: readonly number[][] = []) => {
  const heights = outline.map(([, y]) => y ?? Number.NaN);
  return { top: Math.min(...heights), bottom: Math.max(...heights) };
};

describe("what the yardstick expects, on the chart", () => {
  it("is one band where there is a span at every moment", () => {
    const band = outlines([
      { frame: 1, low: 0.4, high: 0.5 },
      { frame: 2, low: 0.3, high: 0.6 },
    ]);
    expect(band).toEqual([
      [
        [10, 50],
        [20, 40],
        [20, 70],
        [10, 60],
      ],
    ]);
  });

  it("is a slot a pose where only poses are bound, open to the chart's edge", () => {
    const [below, above, ...others] = outlines([
      { frame: 3, low: null, high: 0.5 },
      { frame: 5, low: 0.6, high: null },
    ]);
    expect(spanOf(below)).toEqual({ top: 50, bottom: 95 });
    expect(spanOf(above)).toEqual({ top: 5, bottom: 40 });
    expect(others).toEqual([]);
  });

  it("puts each slot about its own frame, in whatever order the poses come", () => {
    const middles = outlines([
      { frame: 9, low: 0.6, high: null },
      { frame: 4, low: 0.2, high: 0.4 },
    ]).map((corners) => corners.reduce((sum, [x = 0]) => sum + x, 0) / corners.length);
    expect(middles).toEqual([40, 90]);
  });
});

describe("the chart's ruled heights", () => {
  it("are round, within the range, and few", () => {
    const texts = (low: number, high: number) => heightRules({ low, high }).map(({ text }) => text);
    expect(texts(0.893, 1.002)).toEqual(["0.90", "0.95", "1.00"]);
    expect(texts(0.91, 0.97)).toEqual(["0.92", "0.94", "0.96"]);
    expect(texts(0.4, 1.3)).toEqual(["0.50", "1.00"]);
  });
});
