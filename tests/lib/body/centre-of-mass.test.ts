import { describe, expect, it } from "vitest";
import { centreOfMass, type ViewMarks } from "../../../lib/body";
import example from "../../reference/centre-of-mass.json";

const marks: ViewMarks = Object.fromEntries(
  Object.entries(example.points).map(([joint, [x, y]]) => [joint, { x, y, precision: 0.01 }]),
);

describe("the centre of mass", () => {
  it("lies between the published models' for a man and for a woman", () => {
    const found = centreOfMass(marks);
    // The example's trunk begins at the suprasternale, 3 cm ahead of the shoulders that are marked here,
    // and its hands end at the knuckles: 1 cm either way.
    expect(Math.abs((found?.x ?? Number.NaN) - example.mean.x)).toBeLessThan(0.01);
    expect(Math.abs((found?.y ?? Number.NaN) - example.mean.y)).toBeLessThan(0.01);
    expect(found?.share).toBeCloseTo(1, 2);
    expect(found?.plusMinus).toBeCloseTo(0.01, 9);
  });

  it("is that of the parts that are marked, and says their share", () => {
    const { head, ...rest } = marks;
    expect(head).toBeDefined();
    expect(centreOfMass(rest)?.share).toBeCloseTo(1 - 0.0681, 2);
    expect(centreOfMass(rest)?.y).toBeLessThan(centreOfMass(marks)?.y ?? 0);
    expect(centreOfMass({})).toBeNull();
  });
});
