import { describe, expect, it } from "vitest";
import { framesAhead } from "../../../app/_start/brief-of";
import { start } from "../../../app/_words";
import { leastFramesPerStep } from "../../../shared/brief-defaults";

describe("the frames a strip will hold", () => {
  const ahead = (step: number, exposure: 1 | 2) =>
    framesAhead({ left: step, right: step, exposure, leadIn: false });

  it("are none while two poses would share one", () => {
    expect(ahead(6, 2)).toBeNull();
    expect(ahead(7, 2)).toBeNull();
    expect(ahead(8, 2)).toEqual([1, 3, 5, 7, 9, 11, 13, 15, 17]);
    expect(ahead(4, 1)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9]);
  });

  it("are told as too few in words that name the least", () => {
    expect(start.tooFewFrames(leastFramesPerStep(2), 2)).toMatch(
      /^On twos a step needs at least 8 /,
    );
    expect(start.tooFewFrames(leastFramesPerStep(1), 1)).toMatch(/^A step needs at least 4 frames/);
  });
});
