import { describe, expect, it } from "vitest";
import { type JointName, PANEL, type ViewMarks } from "../../../lib/body";
import { placedFigure } from "../../../lib/gait";
import { distance } from "../../../lib/geometry";
import lengths from "../../reference/segment-lengths.json";
import { alone, emptyWalk, figureOf, mark } from "../../support/placed";
import { walk as builtWalk, without } from "../../support/walk";

const STATURE = PANEL.plainLeg / lengths.heights.hip; // panel units

describe("a figure's sizes", () => {
  it("are the published shares of stature where nothing is marked", () => {
    const { marks, sizedBy } = figureOf(alone("stand", null), "alone", "trade");
    expect(sizedBy).toBe("build");
    const { side } = marks;
    const long = (from: JointName, to: JointName) =>
      distance(mark(side, from), mark(side, to)) / STATURE;
    expect(long("left-hip", "left-knee")).toBeCloseTo(lengths.lengths.thigh, 3);
    expect(long("left-knee", "left-ankle")).toBeCloseTo(lengths.lengths.shank, 3);
    expect(long("left-heel", "left-toe")).toBeCloseTo(lengths.lengths.foot, 3);
    // 7.5 heads, where the published adult is 7.7 tall: the trunk is so much shorter, and the arms with it.
    expect(long("left-shoulder", "left-elbow")).toBeCloseTo(lengths.lengths.upperArm, 2);
    expect(long("left-elbow", "left-wrist")).toBeCloseTo(lengths.lengths.forearm, 2);
    const { hip, knee, ankle, shoulder, chin, eye } = lengths.heights;
    for (const [joint, height, digits] of [
      ["left-hip", hip, 3],
      ["left-knee", knee, 3],
      ["left-ankle", ankle, 3],
      ["left-shoulder", shoulder, 2],
      ["neck", chin, 2],
      ["head", eye, 2],
    ] as const) {
      expect((PANEL.groundY - mark(side, joint).y) / STATURE, joint).toBeCloseTo(height, digits);
    }
  });

  it("are the stand's where it is marked, in both views", () => {
    const walk = builtWalk();
    const stand = walk.panels.find(({ pose }) => pose === "stand");
    if (stand === undefined) throw new Error("the built walk has a stand");
    const { marks, sizedBy } = figureOf(walk, "right passing", "trade");
    expect(sizedBy).toBe("stand");
    for (const [from, to] of [
      ["left-hip", "left-knee"],
      ["left-knee", "left-ankle"],
      ["left-shoulder", "left-elbow"],
      ["left-elbow", "left-wrist"],
      ["neck", "head"],
      ["left-heel", "left-toe"],
    ] as const) {
      const drawn = distance(mark(stand.marks.side, from), mark(stand.marks.side, to));
      const placed = distance(mark(marks.side, from), mark(marks.side, to));
      expect(placed, `${from} to ${to}`).toBeCloseTo(drawn, 6);
    }
    const apart = (front: ViewMarks) => mark(front, "left-hip").x - mark(front, "right-hip").x;
    expect(apart(marks.front)).toBeCloseTo(apart(stand.marks.front), 6);
  });

  it("are the other poses' where there is no stand", () => {
    const { sizedBy } = figureOf(without(builtWalk(), "stand"), "right passing", "trade");
    expect(sizedBy).toBe("poses");
  });
});

describe("where a figure stands", () => {
  it("is on its own footprint, else a step from the other foot's, else in the middle", () => {
    const strip = emptyWalk();
    const placedWith = (drawn: number, asked: number) => {
      const [from, to] = [drawn, asked].map((frame) =>
        strip.panels.find((panel) => panel.frame === frame),
      );
      if (from === undefined || to === undefined) throw new Error("no panel there");
      const { marks } = figureOf(strip, from.id, "trade");
      const panels = strip.panels.map((panel) => (panel === from ? { ...panel, marks } : panel));
      return figureOf({ ...strip, panels }, to.id, "trade").placedBy;
    };
    expect(placedWith(1, 7)).toBe("footprint"); // the left contact for the left passing
    expect(placedWith(1, 19)).toBe("step"); // for the right passing
    expect(placedWith(19, 7)).toBe("step"); // and back
    expect(placedWith(7, 13)).toBe("step"); // the left passing for the right contact
    expect(placedWith(1, 25)).toBe("middle"); // two steps away
    expect(figureOf(strip, strip.panels[0]?.id ?? "", "trade").placedBy).toBe("middle");
  });

  it("needs the side that carries, and a panel of the walk", () => {
    expect(placedFigure(alone("passing", null), "alone", "trade")).toEqual({
      kind: "cannot-tell",
      needs: "the side that carries the weight",
    });
    expect(() => placedFigure(emptyWalk(), "nowhere", "trade")).toThrow(
      /placedFigure needs a panel of the walk, got nowhere/,
    );
  });
});
