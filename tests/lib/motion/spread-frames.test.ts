import { describe, expect, it } from "vitest";
import { nextDrawn, roomIn, spreadFrames } from "../../../lib/motion";

const at = (...moments: number[]) => moments.map((moment) => ({ moment }));

describe("frames spread between two that stay", () => {
  it("are the drawn ones nearest to their moments", () => {
    expect(spreadFrames(at(4, 7, 10), { from: 1, to: 13, exposure: 1 })).toEqual([4, 7, 10]);
    expect(spreadFrames(at(4, 7, 10), { from: 1, to: 13, exposure: 2 })).toEqual([5, 7, 11]);
  });

  it("take the one nearer to the drawing where two are equally near", () => {
    const span = { from: 1, to: 14, exposure: 1 } as const;
    expect(spreadFrames([{ moment: 7.5, now: 6 }], span)).toEqual([7]);
    expect(spreadFrames([{ moment: 7.5, now: 9 }], span)).toEqual([8]);
  });

  it("give each pose a frame of its own", () => {
    expect(spreadFrames(at(2, 2, 2), { from: 1, to: 6, exposure: 1 })).toEqual([2, 3, 4]);
    expect(spreadFrames(at(6, 6, 6), { from: 1, to: 6, exposure: 1 })).toEqual([3, 4, 5]);
    expect(spreadFrames(at(3, 3), { from: 1, to: 7, exposure: 2 })).toEqual([3, 5]);
  });

  it("are refused where the span has no room for all", () => {
    expect(() => spreadFrames(at(2, 3), { from: 1, to: 3, exposure: 1 })).toThrow(
      /spreadFrames needs room for 2 between 1 and 3, got 1/,
    );
  });
});

describe("the room between two frames", () => {
  it("counts drawn frames only", () => {
    expect(roomIn({ from: 1, to: 7, exposure: 1 })).toBe(5);
    expect(roomIn({ from: 1, to: 7, exposure: 2 })).toBe(2);
    expect(roomIn({ from: 2, to: 8, exposure: 2 })).toBe(3); // 3 5 7
    expect(roomIn({ from: 7, to: 7, exposure: 1 })).toBe(0);
    expect(roomIn({ from: 7, to: 3, exposure: 1 })).toBe(0);
  });
});

describe("the next drawn frame", () => {
  it("is never the frame itself", () => {
    expect([1, 2, 3].map((frame) => nextDrawn(frame, 1, 2))).toEqual([3, 3, 5]);
    expect([3, 4, 5].map((frame) => nextDrawn(frame, -1, 2))).toEqual([1, 3, 3]);
    expect([nextDrawn(4, 1, 1), nextDrawn(4, -1, 1)]).toEqual([5, 3]);
  });
});
