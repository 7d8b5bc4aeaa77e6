import { describe, expect, it } from "vitest";
import { drawingOn, inBetweens, type Kept } from "../../../lib/motion";

/** The drawing of every frame from 1 to the last, as its frame. */
function shown(poses: readonly Kept[], exposure: 1 | 2 | 3, last: number): string {
  const frames = Array.from({ length: last }, (_, at) => at + 1);
  return frames.map((frame) => drawingOn(poses, frame, exposure)).join(" ");
}

const POSES = [
  { frame: 1, hold: 0 },
  { frame: 5, hold: 0 },
  { frame: 10, hold: 0 },
];

describe("the drawing that is on", () => {
  it("is every frame's own on ones", () => {
    expect(shown(POSES, 1, 10)).toBe("1 2 3 4 5 6 7 8 9 10");
  });

  it("stays for two frames on twos, and for three on threes", () => {
    expect(shown([{ frame: 1, hold: 0 }], 2, 8)).toBe("1 1 3 3 5 5 7 7");
    expect(shown([{ frame: 1, hold: 0 }], 3, 8)).toBe("1 1 1 4 4 4 7 7");
  });

  it("is a pose at its own frame, though that is none of the drawn ones", () => {
    expect(shown(POSES, 2, 12)).toBe("1 1 3 3 5 5 7 7 9 10 11 11");
    expect(shown(POSES, 3, 12)).toBe("1 1 1 4 5 5 7 7 7 10 10 10");
  });

  it("is a held pose until its hold ends, whatever would be drawn", () => {
    expect(shown([{ frame: 1, hold: 4 }], 1, 8)).toBe("1 1 1 1 1 6 7 8");
    expect(shown([{ frame: 2, hold: 2 }], 2, 8)).toBe("1 2 2 2 2 5 7 7");
  });

  it("is the drawn one where no pose has begun", () => {
    expect(shown([{ frame: 5, hold: 0 }], 2, 5)).toBe("1 1 3 3 5");
  });

  it("shows every pose of a motion exactly", () => {
    const keys = POSES.map(({ frame }) => ({
      frame,
      until: frame,
      side: { head: { x: frame ** 2, y: 1 } },
      front: {},
      planted: { left: null, right: null },
    }));
    const motion = inBetweens(keys);
    for (const exposure of [1, 2, 3] as const) {
      for (const key of keys) {
        expect(motion.at(drawingOn(POSES, key.frame, exposure))?.side).toEqual(key.side);
      }
    }
  });

  it("refuses a frame that is none", () => {
    expect(() => drawingOn(POSES, Number.NaN, 1)).toThrow(/drawingOn needs/);
  });
});
