import { describe, expect, it } from "vitest";
import type { JointName } from "../../../lib/body";
import { layOutRemarks, placeLabel, shapeOn, WHOLE_VIEW } from "../../../lib/export";
import type { CheckId, Remark } from "../../../lib/gait";
import { walk } from "../../support/walk";

const PIXEL = 5; // panel units: a paper of 144 px, as on the strip
const FACE = { size: 12 * PIXEL, weight: 700 } as const;
const [PANEL] = walk().panels.filter(({ id }) => id === "left passing");

/** Remarks of several checks on one panel. */
const remarks = (
  [
    ["float", ["left-heel"]],
    ["clearance", ["right-toe"]],
    ["knee", ["left-hip", "left-knee", "left-ankle"]],
    ["limb-length", ["left-knee", "left-ankle"]],
    ["opposition", ["left-wrist", "left-toe"]],
    ["tempo", ["left-ankle", "right-ankle"]],
    ["sink", ["left-toe"]],
  ] satisfies [CheckId, JointName[]][]
).map(
  ([check, joints]): Remark => ({
    ...{ kind: "remark", check, level: "shows", yardstick: "trade", side: "left" },
    ...{ panels: ["left passing"], frames: [19], title: "", why: "", source: "", beyond: 1 },
    spots: [{ panel: "left passing", view: "side", joints }],
    measured: { value: 0.123, plusMinus: 0, unit: "leg" },
    expected: { value: 0.02, plusMinus: 0, unit: "leg" },
  }),
);

function laid(mostWhole: number) {
  const panel = PANEL;
  if (panel === undefined) throw new Error("the walk has a left passing");
  const paper = { panel, view: "side" as const, window: WHOLE_VIEW };
  const nowhere = { panels: [], load: 0, stretchOf: () => ({ place: 0, legLength: 420 }) };
  return layOutRemarks({
    remarks: remarks.map((remark, index) => ({ remark, key: index + 1 })),
    on: (remark) => shapeOn(remark, { ...paper, ...nowhere }),
    ...{ window: WHOLE_VIEW, pixel: PIXEL, face: FACE, mostWhole },
    words: ({ key }, whole) => ({ text: whole ? "12.3 %" : `${key}`, numbered: !whole }),
  });
}

interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

const touch = (one: Box, other: Box) =>
  one.x < other.x + other.width &&
  other.x < one.x + one.width &&
  one.y < other.y + other.height &&
  other.y < one.y + one.height;

describe("many remarks on one panel", () => {
  it("draws the gravest whole and the others as their numbers", () => {
    const all = laid(2);
    expect(all.map(({ whole }) => whole)).toEqual([true, true, false, false, false, false, false]);
    expect(all.map(({ text }) => text)).toEqual(["12.3 %", "12.3 %", "3", "4", "5", "6", "7"]);
  });

  it("lays no words over others, and keeps all inside the paper", () => {
    for (const most of [0, 2, 7]) {
      const boxes = laid(most).map(({ box }) => box);
      boxes.forEach((box, index) => {
        expect(boxes.slice(index + 1).filter((other) => touch(box, other))).toEqual([]);
        expect(box.x).toBeGreaterThanOrEqual(0);
        expect(box.x + box.width).toBeLessThanOrEqual(WHOLE_VIEW.width);
        expect(box.y + box.height).toBeLessThanOrEqual(WHOLE_VIEW.height);
      });
    }
  });
});

describe("the place of a label", () => {
  const size = { width: 40, height: 10 };
  const frame = { x: 0, y: 0, width: 200, height: 200 };
  const at = { x: 100, y: 100 };
  const place = (...asked: Parameters<typeof placeLabel>) => {
    const box = placeLabel(...asked);
    if (box === null) throw new Error("no place was found");
    return box;
  };

  it("is under what it belongs to", () => {
    const box = place(size, at, { taken: [], lines: [], frame });
    expect(box.x + box.width / 2).toBe(100);
    expect(box.y).toBeGreaterThan(100);
  });

  it("is off the figure and off other words", () => {
    const line = [
      { x: 0, y: 108 },
      { x: 200, y: 108 },
    ];
    const first = place(size, at, { taken: [], lines: [line], frame });
    expect(first.y > 108 || first.y + first.height < 108).toBe(true);
    const second = place(size, at, { taken: [first], lines: [line], frame });
    expect(touch(first, second)).toBe(false);
    expect(second.y > 108 || second.y + second.height < 108).toBe(true);
  });

  it("comes back inside the frame", () => {
    const box = place(size, { x: 195, y: 199 }, { taken: [], lines: [], frame });
    expect(box.x + box.width).toBeLessThanOrEqual(200);
    expect(box.y + box.height).toBeLessThanOrEqual(200);
  });

  it("would rather lie across the figure than on other words", () => {
    const lines = Array.from({ length: 40 }, (_, row) => [
      { x: 0, y: row * 5 },
      { x: 200, y: row * 5 },
    ]);
    const first = place(size, at, { taken: [], lines, frame });
    const second = place(size, at, { taken: [first], lines, frame });
    expect(touch(first, second)).toBe(false);
  });

  it("is none where other words leave no room", () => {
    expect(placeLabel(size, at, { taken: [frame], lines: [], frame })).toBeNull();
  });
});
