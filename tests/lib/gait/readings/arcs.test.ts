import { existsSync } from "node:fs";
import { describe, expect, it } from "vitest";
import type { JointName } from "../../../../lib/body";
import { ARC_NAMES, type ArcName, reviewWalk } from "../../../../lib/gait";
import { capturedClips } from "../../../support/captured-clips";
import { CLIPS, type Clip, readClip } from "../../../support/captured-motion";
import { unmark, walk } from "../../../support/walk";

const JOINTS: Readonly<Record<ArcName, readonly JointName[]>> = {
  hips: ["left-hip", "right-hip"],
  head: ["head"],
  "left-wrist": ["left-wrist"],
  "right-wrist": ["right-wrist"],
  "left-ankle": ["left-ankle"],
  "right-ankle": ["right-ankle"],
};

const arcsOf = (judged: Parameters<typeof reviewWalk>[0]) =>
  reviewWalk(judged, "life").strideReadings[0]?.arcs;

describe("the arcs of a stride", () => {
  it("rise with a body that goes up and down as one, and hardly sweep", () => {
    const arcs = arcsOf(walk({ precision: 0.005 }));
    for (const arc of ["hips", "head", "left-wrist"] as const) {
      const { rise, sweep } = arcs?.[arc] ?? {};
      expect(rise).toMatchObject({ kind: "value", unit: "leg" });
      expect(rise).toHaveProperty("value", expect.closeTo(0.96 - 0.91, 3));
      expect(sweep?.kind === "value" ? sweep.value : 1).toBeLessThan(0.01);
    }
    expect(arcs?.head.rise).toHaveProperty("plusMinus", expect.closeTo(Math.SQRT2 * 0.005, 6));
    // Of the hips' two marks the middle is the more exact.
    expect(arcs?.hips.rise).toHaveProperty("plusMinus", expect.closeTo(0.005, 6));
  });

  it("go back and forth with a foot by what a step is long", () => {
    const { sweep, length } = arcsOf(walk())?.["left-ankle"] ?? {};
    expect(sweep?.kind === "value" ? sweep.value : 0).toBeGreaterThan(0.6);
    expect(length?.kind === "value" ? length.value : 0).toBeGreaterThan(2 * 0.6);
  });

  it("say what they need", () => {
    const without = unmark(walk(), "right passing", ["left-wrist"]);
    const arcs = arcsOf(without);
    expect(arcs?.["left-wrist"].rise).toEqual({
      kind: "cannot-tell",
      needs: "the left wrist marked in every pose of the stride, in the side view",
    });
    expect(arcs?.["right-wrist"].rise.kind).toBe("value");
  });
});

describe.skipIf(!existsSync(CLIPS))("the arcs of captured strides, from four poses a step", () => {
  it.each(["07_01", "16_15", "39_01"])("are as they are in every frame: %s", (name) => {
    const posed = capturedClips().find(({ clip }) => clip === name);
    if (posed === undefined) throw new Error(`no ${name}`);
    const arcs = arcsOf(posed.walk);
    for (const arc of ARC_NAMES) {
      const truth = trueArc(readClip(name), arc);
      for (const what of ["length", "rise", "sweep"] as const) {
        const read = arcs?.[arc][what];
        const off = read?.kind === "value" ? Math.abs(read.value - truth[what]) : Number.NaN;
        const most = what === "length" ? 0.045 : arc.endsWith("ankle") ? 0.03 : 0.01;
        expect(off, `${arc}, ${what}`).toBeLessThan(most);
      }
    }
  });
});

/** The first stride's arc in every captured frame, seen walking along. */
function trueArc(clip: Clip, arc: ArcName) {
  const [from, to] = [clip.steps[0]?.contact ?? 0, clip.steps[1]?.next ?? 0];
  const pointAt = (frame: number, joints: readonly JointName[]) => {
    const points = joints.map((joint) => clip.figure(frame).get(joint) ?? { x: 0, y: 0 });
    const mean = (of: "x" | "y") => points.reduce((sum, one) => sum + one[of], 0) / points.length;
    return { x: mean("x"), y: mean("y") };
  };
  const pace = (pointAt(to, JOINTS.hips).x - pointAt(from, JOINTS.hips).x) / (to - from);
  const path = Array.from({ length: 1 + to - from }, (_, at) => {
    const { x, y } = pointAt(from + at, JOINTS[arc]);
    return { x: x - pace * at, y };
  });
  const span = (of: "x" | "y") => {
    const values = path.map((point) => point[of]);
    return Math.max(...values) - Math.min(...values);
  };
  const length = path.slice(1).reduce((sum, { x, y }, at) => {
    const was = path[at] ?? { x: 0, y: 0 };
    return sum + Math.hypot(x - was.x, y - was.y);
  }, 0);
  return { length, rise: span("y"), sweep: span("x") };
}
