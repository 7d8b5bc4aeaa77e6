import { describe, expect, it } from "vitest";
import { shapePoint, shapeStroke, UNSHAPED } from "../../../lib/ink";
import { strokeOf } from "../../support/strokes";

const stroke = strokeOf([
  [10, 0, 0.5],
  [20, 0, 1],
]);

describe("a stroke that is shaped", () => {
  it("is moved by panel units", () => {
    expect(shapeStroke(stroke, { ...UNSHAPED, by: { x: 3, y: -4 } }).points).toEqual([
      [13, -4, 0.5],
      [23, -4, 1],
    ]);
  });

  it("is turned clockwise on the page by a quarter", () => {
    const at = shapePoint(
      { x: 20, y: 0 },
      { ...UNSHAPED, about: { x: 10, y: 0 }, turn: Math.PI / 2 },
    );
    expect(at.x).toBeCloseTo(10, 12);
    expect(at.y).toBeCloseTo(10, 12);
  });

  it("is scaled about a point, its width too", () => {
    const large = shapeStroke(stroke, { ...UNSHAPED, about: { x: 10, y: 0 }, scale: 3 });
    expect(large.points).toEqual([
      [10, 0, 0.5],
      [40, 0, 1],
    ]);
    expect(large.width).toBe(3 * stroke.width);
  });

  it("refuses a scale of nothing and a turn that is no number", () => {
    expect(() => shapeStroke(stroke, { ...UNSHAPED, scale: 0 })).toThrow(/scale above 0, got 0/);
    expect(() => shapeStroke(stroke, { ...UNSHAPED, turn: Number.NaN })).toThrow(/finite turn/);
  });
});
