import { describe, expect, it } from "vitest";
import { NIB_LOOKS, NIBS, outlineOf } from "../../../lib/ink";
import { strokeOf } from "../../support/strokes";

const line = (pressure: number) =>
  strokeOf(
    Array.from({ length: 60 }, (_, i) => [i * 4, 100, pressure] as const),
    { width: 10 },
  );

/** How tall the outline of a level line is half-way along it. */
function thickness(outline: ReturnType<typeof outlineOf>): number {
  const middle = outline.filter(([x]) => Math.abs(x - 118) < 30).map(([, y]) => y);
  return Math.max(...middle) - Math.min(...middle);
}

describe("an outline", () => {
  it("is as wide as the stroke says at full pressure, and thinner below", () => {
    for (const nib of NIBS) {
      const full = thickness(outlineOf({ ...line(1), nib }));
      const light = thickness(outlineOf({ ...line(0.2), nib }));
      expect(Math.abs(full - 10)).toBeLessThan(0.5); // round joins are made of corners
      expect(light).toBeLessThan(full * (1 - NIB_LOOKS[nib].thinning * 0.3));
    }
  });

  it("runs thin where the pen was put down and lifted", () => {
    const outline = outlineOf(line(1));
    const atEnd = outline.filter(([x]) => x > 232).map(([, y]) => y);
    expect(Math.max(...atEnd) - Math.min(...atEnd)).toBeLessThan(5);
  });

  it("shows a tap as a dot, and nothing for no points", () => {
    const dot = outlineOf(strokeOf([[50, 60, 1]]));
    expect(dot.length).toBeGreaterThan(2);
    for (const [x, y] of dot) expect(Math.hypot(x - 50, y - 60)).toBeLessThan(4);
    expect(outlineOf(strokeOf([]))).toEqual([]);
  });

  it("is made of finite corners, also where points repeat", () => {
    const still = strokeOf([
      [5, 5, 0],
      [5, 5, 0],
      [5, 5, 1],
      [6, 5, 0],
    ]);
    const outline = outlineOf(still);
    expect(outline.length).toBeGreaterThan(2);
    expect(outline.flat().every(Number.isFinite)).toBe(true);
  });
});
