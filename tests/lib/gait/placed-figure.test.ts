import { describe, expect, it } from "vitest";
import {
  JOINTS,
  type JointName,
  limbJoint,
  otherSide,
  PANEL,
  type Side,
  type ViewMarks,
} from "../../../lib/body";
import {
  FIGURE_PRECISION,
  footPitch,
  kneeBend,
  reviewWalk,
  type Walk,
  type Yardstick,
} from "../../../lib/gait";
import angles from "../../reference/leg-angles.json";
import { alone, emptyWalk, figureOf, mark } from "../../support/placed";

const DEGREES = 180 / Math.PI;

/** The walk with a figure placed on every panel, one after another. */
function allPlaced(walk: Walk, yardstick: Yardstick, order: "forward" | "backward"): Walk {
  const named = walk.panels.map(({ id }) => id);
  let placed = walk;
  for (const id of order === "forward" ? named : named.toReversed()) {
    const { marks } = figureOf(placed, id, yardstick);
    const panels = placed.panels.map((one) => (one.id === id ? { ...one, marks } : one));
    placed = { ...placed, panels };
  }
  return placed;
}

/** A thigh's lean from the vertical, degrees, knee ahead positive. */
function thighOf(marks: ViewMarks, side: Side): number {
  const [hip, knee] = [mark(marks, `${side}-hip`), mark(marks, `${side}-knee`)];
  return Math.atan2(knee.x - hip.x, knee.y - hip.y) * DEGREES;
}

function degreesOf(answer: ReturnType<typeof kneeBend>): number {
  return answer.kind === "value" ? answer.value * DEGREES : Number.NaN;
}

/** A row of a table between two of its rows, straight. */
function at<Row extends { readonly percent: number }>(
  rows: readonly Row[],
  percent: number,
  read: (row: Row) => number,
): number {
  const after = rows.find((row) => row.percent >= percent);
  const before = rows.findLast((row) => row.percent <= percent);
  if (after === undefined || before === undefined) throw new Error(`no ${percent} %`);
  const span = after.percent - before.percent;
  const share = span === 0 ? 0 : (percent - before.percent) / span;
  return read(before) + share * (read(after) - read(before));
}

describe("a figure placed by life", () => {
  it.each([
    ["contact", 0],
    ["down", 3.5],
    ["up", 25],
    ["passing", 30],
  ] as const)("has the published angles at the %s, in the leg that carries", (pose, percent) => {
    const { side } = figureOf(alone(pose, "left"), "alone", "life").marks;
    const { children } = angles;
    const thigh = at(children, percent, ({ hip, pelvis }) => hip - pelvis);
    expect(thighOf(side, "left")).toBeCloseTo(thigh, 1);
    expect(degreesOf(kneeBend(side, "left"))).toBeCloseTo(
      at(children, percent, ({ knee }) => knee),
      1,
    );
    // A foot within 3° of flat is laid flat.
    const shank = thigh - at(children, percent, ({ knee }) => knee);
    const pitch = shank + at(children, percent, ({ ankle }) => ankle);
    expect(Math.abs(degreesOf(footPitch(side, "left")) - pitch)).toBeLessThan(3);
  });

  it.each([
    ["contact", 0],
    ["down", 3.5],
    ["up", 25],
    ["passing", 30],
  ] as const)("walks at the %s as one adult woman does, within 2 sd", (pose, percent) => {
    const { side } = figureOf(alone(pose, "right"), "alone", "life").marks;
    for (const [leg, when] of [
      ["right", percent],
      ["left", 50 + percent],
    ] as const) {
      const hipSd = at(angles.children, when, (row) => row.hipSd);
      const kneeSd = at(angles.children, when, (row) => row.kneeSd);
      const thigh = thighOf(side, leg) - at(angles.woman, when, (row) => row.thigh);
      const knee = degreesOf(kneeBend(side, leg)) - at(angles.woman, when, (row) => row.knee);
      expect(Math.abs(thigh) / hipSd).toBeLessThan(2);
      expect(Math.abs(knee) / kneeSd).toBeLessThan(2);
    }
  });
});

describe.each(["trade", "life"] as const)("figures placed by %s", (yardstick) => {
  it.each(["forward", "backward"] as const)("pass every check of the board, placed %s", (order) => {
    const strange = { headsTall: 4, legShare: 0.38, statureMetres: null };
    for (const brief of [
      {},
      { leadIn: true },
      { exposure: 2 },
      { travel: "travelling" },
      { stepLength: 0.6 },
      { stepLength: 0.95 },
      { build: strange },
    ] as const) {
      const { remarks, cannotTell } = reviewWalk(
        allPlaced(emptyWalk(brief), yardstick, order),
        yardstick,
      );
      expect(remarks, JSON.stringify(brief)).toEqual([]);
      expect(cannotTell, JSON.stringify(brief)).toEqual([]);
    }
  });

  it("leave uneven times to be told: they place joints, not stems", () => {
    const uneven = emptyWalk({ framesPerStep: { left: 12, right: 14 } });
    const { remarks } = reviewWalk(allPlaced(uneven, yardstick, "forward"), yardstick);
    // Over ground that passes evenly a step of more frames is a longer one, and the last pose opens wider.
    expect(remarks.map(({ check }) => check)).toEqual(["gaps", "symmetry", "loop"]);
  });

  it("have both views at one height, and every joint but the load", () => {
    for (const { marks } of allPlaced(emptyWalk({ leadIn: true }), yardstick, "forward").panels) {
      for (const joint of JOINTS.filter((name) => name !== "load")) {
        expect(mark(marks.front, joint).y).toBeCloseTo(mark(marks.side, joint).y, 6);
        expect(mark(marks.side, joint).precision).toBe(FIGURE_PRECISION * PANEL.plainLeg);
      }
      expect(marks.side.load).toBeUndefined();
    }
  });

  it("stay on their footprints, and one step apart", () => {
    const walk = allPlaced(emptyWalk({ stepLength: 0.7 }), yardstick, "forward");
    const ground = (frame: number, joint: JointName) => {
      const panel = walk.panels.find((one) => one.frame === frame);
      if (panel === undefined) throw new Error(`no panel at ${frame}`);
      return mark(panel.marks.side, joint).x / PANEL.plainLeg + walk.advance * (frame - 1);
    };
    // Within 0.05 %: once poses are marked, the leg is read from them as 1.079 of thigh and shank.
    expect(ground(7, "left-heel")).toBeCloseTo(ground(1, "left-heel"), 3);
    expect(ground(13, "left-ball")).toBeCloseTo(ground(7, "left-ball"), 3);
    expect(ground(13, "right-heel") - ground(1, "left-heel")).toBeCloseTo(0.7, 3);
    expect(ground(25, "left-heel") - ground(13, "right-heel")).toBeCloseTo(0.7, 3);
  });

  it.each(["left", "right"] as const)("land on the %s heel, that side's arm behind", (side) => {
    const { side: marks } = figureOf(alone("contact", side), "alone", yardstick).marks;
    const far = otherSide(side);
    const heel = mark(marks, limbJoint(side, "heel"));
    expect(heel.y).toBeCloseTo(PANEL.groundY, 6);
    expect(mark(marks, limbJoint(side, "toe")).y).toBeLessThan(heel.y - 0.02 * PANEL.plainLeg);
    expect(mark(marks, limbJoint(far, "ball")).y).toBeCloseTo(PANEL.groundY, 6);
    expect(mark(marks, limbJoint(far, "heel")).y).toBeLessThan(PANEL.groundY);
    expect(heel.x).toBeGreaterThan(mark(marks, limbJoint(far, "toe")).x);
    expect(mark(marks, limbJoint(side, "wrist")).x).toBeLessThan(
      mark(marks, limbJoint(far, "wrist")).x,
    );
  });
});

describe("a figure's hips", () => {
  const heightsOf = (stepLength: number) => {
    const walk = allPlaced(emptyWalk({ stepLength }), "life", "forward");
    return walk.panels
      .filter((panel) => panel.frame >= 1 && panel.frame <= 13)
      .map(({ marks: { side } }) => {
        const middle = (mark(side, "left-hip").y + mark(side, "right-hip").y) / 2;
        return (PANEL.groundY - middle) / PANEL.plainLeg;
      });
  };

  // 317 captured steps by 15 people: their hips rise and sink by 1.26 to 5.72 % of a leg in nine of ten.
  it.each([0.5, 0.55, 0.6, 0.78, 0.95, 1])(
    "rise and sink as people's do, in a step of %d of a leg",
    (stepLength) => {
      const heights = heightsOf(stepLength);
      const range = Math.max(...heights) - Math.min(...heights);
      expect(range).toBeGreaterThan(0.0126);
      expect(range).toBeLessThan(0.0572);
    },
  );
});
