import { describe, expect, it } from "vitest";
import { gapBoxes } from "../../../app/_charts/gap-boxes";
import { gapWording } from "../../../app/_charts/gap-words";
import { reviewWalk, type Walk } from "../../../lib/gait";
import { retime, walk } from "../../support/walk";

const boxesOf = (from: Walk, pixelsPerFrame = 40) => {
  const frames = new Map(from.panels.map(({ id, frame }) => [id, frame]));
  return gapBoxes({
    gaps: reviewWalk(from, "trade").gapRow,
    frameOf: (panel) => frames.get(panel),
    xOfFrame: (frame) => pixelsPerFrame * frame,
    wording: gapWording,
  });
};

describe("the row of gaps", () => {
  it("has a box between each two panels, on the ruler's frames", () => {
    const boxes = boxesOf(walk());
    expect(boxes.map(({ frames }) => frames)).toEqual([12, 3, 3, 3, 3, 3, 3, 3, 3]);
    for (const { left, width, fromFrame, toFrame } of boxes) {
      expect(left).toBeGreaterThan(40 * fromFrame);
      expect(left + width).toBeLessThan(40 * toFrame);
    }
  });

  it("tells an uneven gap beside what was expected", () => {
    const uneven = boxesOf(retime(walk(), "left passing", 21)).filter(
      ({ level }) => level !== null,
    );
    expect(uneven.map(({ text }) => text)).toEqual(["5 (3)", "1 (3)"]);
    expect(uneven.map(({ level }) => level)).toEqual(["may-show", "may-show"]);
  });

  it("keeps to the number where there is no room for more, and to the box where there is none", () => {
    const narrow = boxesOf(retime(walk(), "left passing", 21), 7).filter(
      ({ level }) => level !== null,
    );
    expect(narrow.map(({ text }) => text)).toEqual(["5", ""]);
  });

  it("leaves out the gap of two panels on one frame", () => {
    expect(boxesOf(retime(walk(), "left passing", 22)).map(({ frames }) => frames)).not.toContain(
      0,
    );
  });
});
