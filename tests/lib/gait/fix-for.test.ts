import { describe, expect, it } from "vitest";
import { limbJoint, SIDES, type Side, type ViewMarks } from "../../../lib/body";
import {
  applyFix,
  type CheckId,
  type Fix,
  fixFor,
  reviewWalk,
  type Walk,
  type WalkPanel,
  type Yardstick,
} from "../../../lib/gait";
import { distance } from "../../../lib/geometry";
import {
  lift,
  type PanelName,
  push,
  raise,
  retime,
  unmark,
  walk,
  without,
} from "../../support/walk";

const FOOT = ["ankle", "heel", "ball", "toe"] as const;
const foot = (side: Side) => FOOT.map((part) => limbJoint(side, part));
const exact = () => walk({ precision: 0 });

function fixOf(faulty: Walk, check: CheckId, yardstick: Yardstick = "trade"): Fix {
  const remark = reviewWalk(faulty, yardstick).remarks.find((one) => one.check === check);
  const fix = remark === undefined ? null : fixFor(faulty, remark);
  if (fix === null) throw new Error(`no fix for ${check}`);
  return fix;
}

function panelOf(from: Walk, id: string): WalkPanel {
  const panel = from.panels.find((one) => one.id === id);
  if (panel === undefined) throw new Error(`no panel ${id}`);
  return panel;
}

function mark(marks: ViewMarks, joint: `${Side}-${"hip" | "knee" | (typeof FOOT)[number]}`) {
  const found = marks[joint];
  if (found === undefined) throw new Error(`no ${joint}`);
  return found;
}

function bones(marks: ViewMarks, side: Side): number[] {
  const knee = mark(marks, `${side}-knee`);
  return [distance(mark(marks, `${side}-hip`), knee), distance(knee, mark(marks, `${side}-ankle`))];
}

describe("a fix for the hips", () => {
  const faulty = raise(exact(), "left down", 0.06);
  const fix = fixOf(faulty, "hip-order");
  const [before, after] = [faulty, applyFix(faulty, fix)].map((one) => panelOf(one, "left down"));
  if (before === undefined || after === undefined) throw new Error("the down is there");

  it("says which way and how far", () => {
    expect(fix.title).toBe("Lower the left down by 5.0 % of a leg");
  });

  it("keeps the feet, the length of thigh and shank, and the knee's side", () => {
    for (const side of SIDES) {
      for (const joint of foot(side)) {
        expect(after.marks.side[joint]).toEqual(before.marks.side[joint]);
        expect(after.marks.front[joint]).toEqual(before.marks.front[joint]);
      }
      bones(after.marks.side, side).forEach((length, at) => {
        expect(length).toBeCloseTo(bones(before.marks.side, side)[at] ?? Number.NaN, 1);
      });
    }
    const { marks } = after;
    expect(mark(marks.side, "left-knee").x).toBeGreaterThan(mark(before.marks.side, "left-knee").x);
  });

  it("takes everything above the hips along, and both views in height", () => {
    for (const view of ["side", "front"] as const) {
      for (const joint of ["head", "left-wrist", "left-hip"] as const) {
        const down = (after.marks[view][joint]?.y ?? 0) - (before.marks[view][joint]?.y ?? 0);
        expect(down).toBeCloseTo(0.05 * 420, 1);
      }
    }
    for (const side of SIDES) {
      const joint = limbJoint(side, "knee");
      expect(after.marks.front[joint]?.y).not.toBe(before.marks.front[joint]?.y);
      expect(after.marks.front[joint]?.y).toBeCloseTo(after.marks.side[joint]?.y ?? 0, 1);
    }
  });
});

describe("a fix for a foot", () => {
  it("lays it on its footprint", () => {
    const faulty = push(exact(), "left passing", foot("left"), 0.1);
    const after = applyFix(faulty, fixOf(faulty, "slide"));
    for (const joint of foot("left")) {
      const is = panelOf(after, "left passing").marks.side[joint];
      expect(is?.x).toBeCloseTo(panelOf(exact(), "left passing").marks.side[joint]?.x ?? 0, 1);
    }
  });

  it("puts it on the ground, whichever way it was off", () => {
    for (const [check, legs] of [
      ["float", 0.05],
      ["sink", -0.05],
    ] as const) {
      const faulty = lift(exact(), "left passing", foot("left"), legs);
      const { side, front } = panelOf(applyFix(faulty, fixOf(faulty, check)), "left passing").marks;
      expect(side["left-heel"]?.y).toBeCloseTo(1080, 1);
      expect(front["left-heel"]?.y).toBeCloseTo(1080, 1);
    }
  });

  it("lowers the body where the leg does not reach, and says so", () => {
    const hanging = lift(
      raise(exact(), "left passing", 0.1),
      "left passing",
      [...foot("left"), "left-knee"],
      0.1,
    );
    const fix = fixOf(hanging, "float", "life");
    expect(fix.title).toMatch(
      /^Put the left foot on the ground and lower the body by [\d.]+ % of a leg$/,
    );
  });
});

describe("a fix for time", () => {
  it("moves the stem that stands wrong, and leaves the planted foot where it lies", () => {
    const faulty = retime(exact(), "left passing", 22);
    const fix = fixOf(faulty, "gaps", "life");
    expect(fix.changes).toContainEqual({ kind: "slide", panel: "left passing", frame: 20 });
    const after = reviewWalk(applyFix(faulty, fix), "life");
    expect(after.remarks.filter(({ check }) => check === "slide")).toEqual([]);
  });

  it("gives both steps the same time, each pose at its share", () => {
    const faulty = walk({ precision: 0, frames: { left: 16, right: 8 } });
    const remark = reviewWalk(faulty, "trade").remarks.find(({ side }) => side === null);
    const fix = remark === undefined ? null : fixFor(faulty, remark);
    const frames = applyFix(faulty, fix ?? { changes: [] }).panels.map(({ frame }) => frame);
    expect(frames).toEqual([1, 13, 16, 19, 22, 25, 28, 31, 34, 37]);
  });
});

describe("a fix for missing poses", () => {
  it("adds every pose that a step lacks, at its even frame, marked in-between", () => {
    const bare = (["left down", "left passing", "left up"] as const).reduce<Walk>(
      (rest, name) => without(rest, name),
      exact(),
    );
    const fix = fixOf(bare, "missing-pose");
    expect(fix.title).toBe("Add a down at frame 16, a passing at frame 19 and an up at frame 22");
    const added = fix.changes.flatMap((change) => (change.kind === "add-panel" ? [change] : []));
    expect(added.map(({ frame, pose, weightOn }) => [frame, pose, weightOn])).toEqual([
      [16, "down", "left"],
      [19, "passing", "left"],
      [22, "up", "left"],
    ]);
    for (const { marks } of added) expect(Object.keys(marks.side)).toHaveLength(23 - 3);
    expect(
      reviewWalk(applyFix(bare, fix), "trade").remarks.filter(({ level }) => level === "shows"),
    ).toEqual([]);
  });

  it("keeps the carrying foot where the steps about it have it", () => {
    const bare = without(exact(), "left passing");
    const added = fixOf(bare, "missing-pose").changes[0];
    const marks = added?.kind === "add-panel" ? added.marks : null;
    for (const joint of foot("left")) {
      const was = panelOf(exact(), "left passing").marks.side[joint];
      expect(marks?.side[joint]?.x).toBeCloseTo(was?.x ?? Number.NaN, 1);
      expect(marks?.side[joint]?.y).toBeCloseTo(was?.y ?? Number.NaN, 1);
    }
  });

  it("adds an empty panel where nothing is marked", () => {
    const panels = without(exact(), "left passing").panels.map((panel) => ({
      ...panel,
      marks: { side: {}, front: {} },
    }));
    const [added] = fixOf({ ...exact(), panels }, "missing-pose").changes;
    expect(added).toMatchObject({ kind: "add-panel", frame: 19, marks: { side: {}, front: {} } });
  });

  it("has none where no frame is free", () => {
    let crowded = without(exact(), "left passing");
    crowded = retime(retime(crowded, "left down", 18), "left up", 19);
    const remark = reviewWalk(crowded, "trade").remarks.find(
      ({ check }) => check === "missing-pose",
    );
    expect(remark).toBeDefined();
    if (remark !== undefined) expect(fixFor(crowded, remark)).toBeNull();
  });
});

describe("a fix", () => {
  it("changes nothing by itself", () => {
    const faulty = raise(exact(), "left down", 0.06);
    const before = JSON.stringify(faulty);
    applyFix(faulty, fixOf(faulty, "hip-order"));
    expect(JSON.stringify(faulty)).toBe(before);
  });

  it("is none for the roll of a foot, which the artist draws", () => {
    const faulty = lift(exact(), "left passing", ["left-ball", "left-toe"], 0.1);
    const [remark] = reviewWalk(faulty, "trade").remarks.filter(
      ({ check }) => check === "foot-roll",
    );
    expect(remark).toBeDefined();
    if (remark !== undefined) expect(fixFor(faulty, remark)).toBeNull();
  });

  it("is none for a remark of another walk", () => {
    const faulty = raise(exact(), "left down", 0.06);
    const [remark] = reviewWalk(faulty, "trade").remarks;
    const other = { ...faulty, panels: faulty.panels.map((one) => ({ ...one, id: `x${one.id}` })) };
    if (remark !== undefined) expect(fixFor(other, remark)).toBeNull();
  });

  it("works on the quick set, which has no ankles", () => {
    const quick = ["contact", "down", "passing", "up"].reduce<Walk>(
      (rest, pose) =>
        SIDES.reduce<Walk>(
          (one, side) =>
            unmark(one, `${side} ${pose}` as PanelName, [
              "left-ankle",
              "right-ankle",
              "left-ball",
              "right-ball",
            ]),
          rest,
        ),
      raise(exact(), "left down", 0.06),
    );
    expect(fixOf(quick, "hip-order").title).toBe("Lower the left down by 5.0 % of a leg");
  });
});
