import { describe, expect, it } from "vitest";
import { cadence, froude, symmetryIndex, tempo } from "../../../lib/gait";
import froudes from "../../reference/froude.json";
import symmetry from "../../reference/symmetry-index.json";
import table from "../../reference/tempo-table.json";

const build = { headsTall: 7.5, legShare: 0.53, statureMetres: null };

describe("tempo", () => {
  it.each(table.rows)("reads $frames frames a step as $reads", (row) => {
    const read = tempo({ framesPerStep: row.frames, framesPerSecond: 24, stepLength: 0.78, build });
    expect(read.stepsPerMinute).toBe(row.stepsPerMinute);
    expect(read.reads).toContain(row.reads);
  });

  it("reads the same walk alike at another rate", () => {
    const read = tempo({ framesPerStep: 15, framesPerSecond: 30, stepLength: 0.78, build });
    expect(read).toMatchObject({ secondsPerStep: 0.5, stepsPerMinute: 120 });
    expect(read.reads).toContain("brisk");
  });

  it("tells speed in leg lengths, and in metres only once there is a stature", () => {
    const pace = { framesPerStep: 12, framesPerSecond: 24, stepLength: 0.75 };
    expect(tempo({ ...pace, build })).toMatchObject({
      legsPerSecond: 1.5,
      metresPerSecond: null,
      froude: null,
    });
    const tall = tempo({ ...pace, build: { ...build, statureMetres: 1.7 } });
    expect(tall.metresPerSecond).toBeCloseTo(1.5 * 0.53 * 1.7, 12);
  });

  it("refuses a rate of 0", () => {
    expect(() => cadence(12, 0)).toThrow(/cadence needs framesPerSecond above 0, got 0/);
  });
});

describe("froude number", () => {
  it.each(froudes.rows)("of $speed m/s on a leg of $leg m", (row) => {
    // The worked example is given to four digits, the clips to five.
    expect(froude(row.speed, row.leg)).toBeCloseTo(row.froude, 4);
  });

  it("refuses NaN", () => {
    expect(() => froude(Number.NaN, 0.9)).toThrow(/got NaN/);
  });
});

describe("symmetry index", () => {
  it.each(symmetry.rows)("of $left and $right", (row) => {
    expect(100 * symmetryIndex(row.left, row.right)).toBeCloseTo(row.percent, 3);
  });

  it("does not mind which side is which", () => {
    expect(symmetryIndex(12, 16)).toBe(symmetryIndex(16, 12));
  });
});
