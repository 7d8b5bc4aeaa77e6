import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cutStroke } from "../../../lib/ink";
import { anyStroke, strokeOf } from "../../support/strokes";

const line = strokeOf([
  [0, 0, 0],
  [100, 0, 1],
]);

describe("a stroke that is cut", () => {
  it("is in two pieces where its middle is rubbed, with points on the border", () => {
    const [one, two, ...more] = cutStroke(line, ({ x }) => x < 40 || x > 60);
    expect(more).toEqual([]);
    expect(one?.points).toEqual([
      [0, 0, 0],
      [38, 0, 0.38],
    ]);
    expect(two?.points).toEqual([
      [62, 0, 0.62],
      [100, 0, 1],
    ]);
    expect(one).toMatchObject({ panel: line.panel, nib: line.nib, z: line.z });
  });

  it("is the same stroke when nothing of it goes, also a dot", () => {
    fc.assert(fc.property(anyStroke, (stroke) => cutStroke(stroke, () => true)[0] === stroke));
  });

  it("is gone when all of it goes", () => {
    expect(cutStroke(line, () => false)).toEqual([]);
    expect(cutStroke(strokeOf([[5, 5, 1]]), () => false)).toEqual([]);
  });

  it("keeps its own points and makes none where nothing is cut", () => {
    const bent = strokeOf([
      [0, 0, 1],
      [0, 50, 1],
      [50, 50, 1],
      [50, 200, 1],
    ]);
    const [first] = cutStroke(bent, ({ y }) => y < 100);
    expect(first?.points.slice(0, 3)).toEqual(bent.points.slice(0, 3));
    expect(first?.points.length).toBe(4);
    expect(first?.points[3]?.[1]).toBeCloseTo(98, 0);
  });

  it("leaves no piece with a point where none may stay", () => {
    fc.assert(
      fc.property(anyStroke, ({ points }) => {
        const stays = ({ x, y }: { x: number; y: number }) => (x - y) % 97 < 40;
        const near = points.filter(([x, y]) => Math.abs(x) < 3000 && Math.abs(y) < 3000);
        for (const piece of cutStroke(strokeOf(near), stays)) {
          if (piece.points.length === near.length) continue;
          for (const [x, y] of piece.points) expect(stays({ x, y })).toBe(true);
        }
      }),
      { numRuns: 30 },
    );
  });
});
