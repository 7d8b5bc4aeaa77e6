import { describe, expect, it } from "vitest";
import { gatherStrokes } from "../../../lib/ink";
import { strokeOf } from "../../support/strokes";

const box = [
  { x: 0, y: 0 },
  { x: 100, y: 0 },
  { x: 100, y: 100 },
  { x: 0, y: 100 },
];
const line = (...xs: number[]) => strokeOf(xs.map((x) => [x, 50, 1]));

describe("gathering strokes", () => {
  it("takes those that lie inside by half or more, and leaves the rest", () => {
    const inside = line(10, 20, 30);
    const mostly = line(80, 90, 110);
    const halfway = line(90, 110);
    const hardly = line(90, 110, 120);
    const outside = line(200, 210);
    expect(gatherStrokes([inside, mostly, halfway, hardly, outside], box)).toEqual([
      inside,
      mostly,
      halfway,
    ]);
  });

  it("takes nothing with an outline that encloses nothing", () => {
    expect(gatherStrokes([line(10)], box.slice(0, 2))).toEqual([]);
  });
});
