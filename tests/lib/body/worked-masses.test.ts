import { describe, expect, it } from "vitest";
import { BODY_PARTS, centreOfMass, type Landmarks, MASS_MODELS } from "../../../lib/body";
import worked from "../../reference/worked-masses.json";

/** The points as marks; a mark's y runs down, and none of this minds. */
const marksOf = (points: Readonly<Record<string, readonly number[]>>): Landmarks =>
  Object.fromEntries(
    Object.entries(points).map(([name, [x = 0, y = 0]]) => [name, { x, y, precision: 0 }]),
  );
const only = (marks: Landmarks, ...names: readonly (keyof Landmarks)[]): Landmarks =>
  Object.fromEntries(names.map((name) => [name, marks[name]]));

describe("a worked limb", () => {
  const limb = marksOf(worked.limb.points);
  it.each([
    { part: "foot", ends: ["left-ankle", "left-ball"] },
    { part: "leg", ends: ["left-knee", "left-ankle"] },
    { part: "thigh", ends: ["left-hip", "left-knee"] },
  ] as const)("has the printed centre of its $part", ({ part, ends }) => {
    const found = centreOfMass(only(limb, ...ends), { model: "dempster" });
    const [x = Number.NaN, y = Number.NaN] = worked.limb[part];
    // Printed to three digits, and rounded there: 0.0615 stands as 0.062.
    expect(Math.abs((found?.x ?? Number.NaN) - x)).toBeLessThanOrEqual(0.000501);
    expect(Math.abs((found?.y ?? Number.NaN) - y)).toBeLessThanOrEqual(0.000501);
  });

  it("has the printed centre of the whole limb, and its share of the mass", () => {
    const found = centreOfMass(limb, { model: "dempster" });
    expect([found?.x, found?.y].map((value) => Number(value?.toFixed(3)))).toEqual(
      worked.limb.whole,
    );
    expect(found?.share).toBeCloseTo(worked.limb.share, 9);
    expect(found?.missing).toContain("trunk");
    expect(found?.missing).not.toContain("left thigh");
  });
});

describe("a worked body", () => {
  const body = marksOf(worked.body.points);
  it.each(worked.body.answers)("has the centre that the tables give: $model", (answer) => {
    const model = MASS_MODELS.find((one) => one === answer.model) ?? "mean";
    const found = centreOfMass(body, { model });
    expect(found?.x).toBeCloseTo(answer.x, 4);
    expect(found?.y).toBeCloseTo(answer.y, 4);
    expect(found?.missing).toEqual([]);
  });

  it.each(MASS_MODELS)("has all of its mass: %s", (model) => {
    const sum = BODY_PARTS[model].reduce((total, { mass }) => total + mass, 0);
    expect(sum).toBeCloseTo(1, 3); // the women's table adds up to 0.9999
  });

  it("is drawn toward a load by the load's share of both", () => {
    const bare = centreOfMass(body);
    const sack = { ...body, load: { x: -0.3, y: 1.4, precision: 0 } };
    const loaded = centreOfMass(sack, { load: 0.25 });
    const total = (bare?.share ?? 0) + 0.25;
    expect(loaded?.x).toBeCloseTo(((bare?.x ?? 0) * (bare?.share ?? 0) - 0.25 * 0.3) / total, 9);
    expect(loaded?.share).toBe(bare?.share);
    expect(centreOfMass(sack)?.x).toBe(bare?.x); // what weighs nothing moves nothing
  });

  it("says when a load weighs and is not marked, and goes on without it", () => {
    const found = centreOfMass(body, { load: 0.25 });
    expect(found?.missing).toEqual(["load"]);
    expect(found?.x).toBe(centreOfMass(body)?.x);
  });
});
