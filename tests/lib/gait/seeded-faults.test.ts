import { describe, expect, it } from "vitest";
import { reviewWalk } from "../../../lib/gait";
import { GAPS, HEIGHTS, SLIDES } from "../../support/faults-of-steps";
import { type StepFrames, walk } from "../../support/walk";

const cases = [...SLIDES, ...HEIGHTS, ...GAPS].flatMap((fault) =>
  fault.precisions.flatMap((precision) =>
    (["left", "right"] as const).map((side) => ({ ...fault, fault, precision, side })),
  ),
);

describe.each(cases)("$name on the $side by $yardstick, marks ± $precision", (seeded) => {
  const { fault, side, precision } = seeded;
  const remarksAt = (times: number) =>
    reviewWalk(fault.put(walk({ precision }), side, times), fault.yardstick).remarks.filter(
      ({ check }) => check === fault.check,
    );

  it("is named at twice its threshold, at its panels and side", () => {
    const remarks = remarksAt(2);
    const panels = fault.panels.map((panel) => panel.replace("@", side));
    expect(remarks).toContainEqual(
      expect.objectContaining({ level: fault.level, side, panels: expect.arrayContaining(panels) }),
    );
    expect(remarks.filter((remark) => remark.side !== side)).toEqual([]);
  });

  it("is passed over at half of it", () => {
    expect(remarksAt(0.5)).toEqual([]);
  });
});

describe.each(["trade", "life"] as const)("steps of unequal time by %s", (yardstick) => {
  const at = (frames: StepFrames) =>
    reviewWalk(walk({ frames }), yardstick).remarks.map(({ check, level }) => `${check} ${level}`);

  it("are named at twice an index of 15 %", () => {
    expect(at({ left: 23, right: 17 })).toContain("gaps shows"); // 30 %
  });

  it("are passed over at half of it", () => {
    expect(at({ left: 28, right: 26 })).toEqual([]); // 7.4 %
  });
});
