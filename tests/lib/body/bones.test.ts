import { describe, expect, it } from "vitest";
import {
  BONES,
  bonesOf,
  JOINTS,
  type JointName,
  type Mark,
  type ViewMarks,
} from "../../../lib/body";

const at: Mark = { x: 1, y: 2, precision: 1 };
const marks = (...joints: JointName[]): ViewMarks =>
  Object.fromEntries(joints.map((joint) => [joint, at]));
const names = (drawn: ViewMarks) => bonesOf(drawn).map(({ from, to }) => `${from} ${to}`);

describe("bones", () => {
  it("join every joint of the body", () => {
    const joined = new Set(BONES.flatMap(({ from, to }) => [from, to]));
    expect(JOINTS.filter((joint) => !joined.has(joint))).toEqual(["load"]);
  });

  it("follow a leg from hip to heel", () => {
    expect(names(marks("left-hip", "left-knee", "left-ankle", "left-heel"))).toEqual([
      "left-hip left-knee",
      "left-knee left-ankle",
      "left-ankle left-heel",
    ]);
  });

  it("run from heel to toe when the ball is not marked", () => {
    expect(names(marks("right-heel", "right-toe"))).toEqual(["right-heel right-toe"]);
  });

  it("say whose limb they belong to", () => {
    expect(bonesOf(marks("right-hip", "right-knee"))).toMatchObject([{ side: "right" }]);
    expect(bonesOf(marks("left-hip", "right-hip"))).toMatchObject([{ side: null }]);
  });

  it("leave out a mark that is no number", () => {
    const broken = { ...marks("left-hip"), "left-knee": { x: Number.NaN, y: 0, precision: 1 } };
    expect(bonesOf(broken)).toEqual([]);
  });
});
