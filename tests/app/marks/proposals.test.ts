import { describe, expect, it } from "vitest";
import { nextJoint, proposals, quickSet, quickSetDone } from "../../../app/_marks/proposals";
import { JOINTS, type JointName, type ViewMarks } from "../../../lib/body";
import { VIEWS } from "../../../lib/geometry";

const AT = { x: 360, y: 600, precision: 2.1 };
const marked = (joints: readonly JointName[]): ViewMarks =>
  Object.fromEntries(joints.map((joint) => [joint, AT]));

describe("the order in which joints are proposed", () => {
  it("asks for hips, knees, heels and toes from the side, near side first", () => {
    expect(quickSet("side")).toEqual([
      ...["right-hip", "left-hip", "right-knee", "left-knee"],
      ...["right-heel", "left-heel", "right-toe", "left-toe"],
    ]);
  });

  it("asks for hips and feet from ahead", () => {
    expect(quickSet("front")).toEqual([
      ...["right-hip", "left-hip", "right-heel", "left-heel", "right-toe", "left-toe"],
    ]);
  });

  it.each(VIEWS)("comes to every joint of the %s view once, and to a load never", (view) => {
    const all = JOINTS.filter((joint) => joint !== "load");
    expect([...proposals(view)].sort()).toEqual([...all].sort());
    expect(proposals(view)).toHaveLength(all.length);
  });

  it("proposes the first joint that is not marked, wherever the hand began", () => {
    expect(nextJoint({}, "side")).toBe("right-hip");
    expect(nextJoint(marked(["right-hip", "left-knee"]), "side")).toBe("left-hip");
  });

  it("goes on to the finer marks when the quick set is done", () => {
    const quick = marked(quickSet("side"));
    expect(quickSetDone(quick, "side")).toBe(true);
    expect(nextJoint(quick, "side")).toBe("right-ankle");
  });

  it("calls the quick set unfinished while one of it is missing or damaged", () => {
    const all = quickSet("side");
    expect(quickSetDone(marked(all.slice(1)), "side")).toBe(false);
    const damaged = { ...marked(all), "left-toe": { ...AT, x: Number.NaN } };
    expect(quickSetDone(damaged, "side")).toBe(false);
    expect(nextJoint(damaged, "side")).toBe("left-toe");
  });

  it("proposes nothing when every joint is marked", () => {
    expect(nextJoint(marked(JOINTS), "front")).toBeNull();
  });
});
