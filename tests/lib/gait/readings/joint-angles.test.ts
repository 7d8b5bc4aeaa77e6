import { describe, expect, it } from "vitest";
import type { ViewMarks } from "../../../../lib/body";
import {
  type Answer,
  ankleBend,
  baseLength,
  baseWidth,
  elbowBend,
  hipBend,
  pelvisTilt,
  shoulderTilt,
  trunkLean,
  walkLegLength,
} from "../../../../lib/gait";
import { unmark, walk } from "../../../support/walk";

const DEGREE = Math.PI / 180;
/** A point so far from another, at so many degrees ahead of straight down. */
const from = ({ x, y }: { x: number; y: number }, length: number, degrees: number) => ({
  x: x + length * Math.sin(degrees * DEGREE),
  y: y + length * Math.cos(degrees * DEGREE),
  precision: 0,
});
const degrees = (answer: Answer) =>
  answer.kind === "value" ? answer.value / DEGREE : answer.needs;

const hip = { x: 0, y: 0, precision: 0 };
const knee = from(hip, 200, 25); // thigh 25° ahead
const ankle = from(knee, 200, 5); // shank 5° ahead of hanging: knee bent 20°
const shoulder = from(hip, 250, 180 - 8); // trunk 8° forward
const elbow = from(shoulder, 130, -15);
const marks: ViewMarks = {
  "left-hip": hip,
  "left-knee": knee,
  "left-ankle": ankle,
  "left-heel": { x: ankle.x - 20, y: ankle.y + 30, precision: 0 },
  "left-ball": { x: ankle.x + 80, y: ankle.y + 30 - 100 * Math.tan(12 * DEGREE), precision: 0 },
  "left-shoulder": shoulder,
  "left-elbow": elbow,
  "left-wrist": from(elbow, 120, 20),
};

describe("angles of a drawn figure", () => {
  it("are those it was drawn with, bent and forward positive", () => {
    expect(degrees(trunkLean(marks))).toBeCloseTo(8, 6);
    expect(degrees(hipBend(marks, "left"))).toBeCloseTo(25 + 8, 6);
    expect(degrees(ankleBend(marks, "left"))).toBeCloseTo(12 - 5, 6);
    expect(degrees(elbowBend(marks, "left"))).toBeCloseTo(35, 6);
  });

  it("have a tilt from ahead that is positive where the left is lower", () => {
    const front: ViewMarks = {
      "left-hip": { x: 400, y: 500 + 80 * Math.tan(4 * DEGREE), precision: 0 },
      "right-hip": { x: 320, y: 500, precision: 0 },
      "left-shoulder": { x: 410, y: 200, precision: 1 },
      "right-shoulder": { x: 310, y: 200, precision: 1 },
    };
    expect(degrees(pelvisTilt(front))).toBeCloseTo(4, 6);
    expect(shoulderTilt(front)).toMatchObject({ value: 0, plusMinus: Math.SQRT2 / 100 });
  });

  it("say what they need, each for itself", () => {
    expect(elbowBend({}, "right")).toEqual({
      kind: "cannot-tell",
      needs: "the right shoulder, elbow and wrist marked in the side view",
    });
    expect(hipBend({ "left-hip": hip, "left-knee": knee }, "left").kind).toBe("cannot-tell");
    expect(pelvisTilt({ "left-hip": hip })).toMatchObject({
      needs: "both hips marked in the front view",
    });
  });

  it("cannot be told of joints that lie on each other, rather than be no number", () => {
    expect(trunkLean({ "left-hip": hip, "left-shoulder": hip }).kind).toBe("cannot-tell");
  });
});

describe("the base that a pose stands on", () => {
  const built = walk({ precision: 0 });
  const leg = walkLegLength(built);
  const panel = (name: string) => {
    const found = built.panels.find(({ id }) => id === name);
    if (found === undefined) throw new Error(`no ${name}`);
    return found;
  };

  it("runs from heel to toe of one foot, and of both at a contact", () => {
    expect(baseLength(panel("left passing"), leg)).toMatchObject({ kind: "value" });
    const one = baseLength(panel("left passing"), leg);
    const both = baseLength(panel("left contact"), leg);
    expect(one.kind === "value" && one.value).toBeCloseTo(0.25, 9);
    // The foot behind stands on its ball, 18 % of a leg ahead of its heel, which is up by 20° and so nearer.
    const nearer = 0.18 * (1 - Math.cos(20 * DEGREE));
    expect(both.kind === "value" && both.value).toBeCloseTo(0.72 + 0.25 - nearer, 9);
  });

  it("is a foot broad at passing, and both feet's outer edges apart at a contact", () => {
    const one = baseWidth(panel("left passing"), leg);
    const both = baseWidth(panel("left contact"), leg);
    expect(one.kind === "value" && one.value).toBeCloseTo(0.104, 9);
    expect(both.kind === "value" && both.value).toBeCloseTo(0.11 + 0.104, 9);
  });

  it("cannot be told without the feet", () => {
    const blind = unmark(built, "left contact", ["left-heel"]).panels.find(
      ({ id }) => id === "left contact",
    );
    expect(blind && baseLength(blind, leg).kind).toBe("cannot-tell");
  });
});
