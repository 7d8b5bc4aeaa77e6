import { describe, expect, it } from "vitest";
import { evenFrames, nearestDrawn } from "../../../lib/motion";
import reference from "../../reference/even-step.json";

describe("even frames", () => {
  it.each(reference.rows)("of $framesPerStep frames a step, exposed $exposure", (row) => {
    const layout = evenFrames({
      from: 1,
      steps: 2,
      startsWith: "left",
      framesPerStep: { left: row.framesPerStep, right: row.framesPerStep },
      exposure: row.exposure === 2 ? 2 : 1,
    });
    expect(layout.map(({ frame }) => frame)).toEqual(row.frames);
  });

  it("name pose and side, and end on the contact that closes the cycle", () => {
    const layout = evenFrames({
      from: 1,
      steps: 2,
      startsWith: "right",
      framesPerStep: { left: 12, right: 12 },
      exposure: 1,
    });
    expect(layout.map(({ pose, weightOn }) => `${weightOn} ${pose}`)).toEqual([
      ...["contact", "down", "passing", "up"].map((pose) => `right ${pose}`),
      ...["contact", "down", "passing", "up"].map((pose) => `left ${pose}`),
      "right contact",
    ]);
  });

  it("give each side its own number of frames", () => {
    const layout = evenFrames({
      from: 1,
      steps: 2,
      startsWith: "left",
      framesPerStep: { left: 12, right: 16 },
      exposure: 1,
    });
    expect(layout.map(({ frame }) => frame)).toEqual([1, 4, 7, 10, 13, 17, 21, 25, 29]);
  });

  it.each([8, 9, 11, 12, 13, 16])("stay on odd frames on twos, %i frames a step", (frames) => {
    const layout = evenFrames({
      from: 1,
      steps: 4,
      startsWith: "left",
      framesPerStep: { left: frames, right: frames },
      exposure: 2,
    });
    expect(layout.filter(({ frame }) => frame % 2 !== 1)).toEqual([]);
  });

  it("refuse a step of no frames", () => {
    const layout = { from: 1, steps: 1, startsWith: "left", exposure: 1 } as const;
    expect(() => evenFrames({ ...layout, framesPerStep: { left: 0, right: 12 } })).toThrow(
      /evenFrames needs frames per left step above 0, got 0/,
    );
  });
});

describe("the nearest drawn frame", () => {
  it("is the frame itself on ones, and an odd one on twos", () => {
    expect([1, 2, 3, 4].map((frame) => nearestDrawn(frame, 1))).toEqual([1, 2, 3, 4]);
    expect([1, 2, 3, 4].map((frame) => nearestDrawn(frame, 2))).toEqual([1, 3, 3, 5]);
  });
});
