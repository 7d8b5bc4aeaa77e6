import { describe, expect, it } from "vitest";
import { leftOfQuickSet, promptedJoint } from "../../../app/_marks/prompt";
import { quickSet } from "../../../app/_marks/proposals";
import { whereNext } from "../../../app/_marks/where-next";
import type { JointName, ViewMarks } from "../../../lib/body";
import type { Panel } from "../../../lib/sheet";

const AT = { x: 360, y: 600, precision: 2.1 };
const marked = (joints: readonly JointName[]): ViewMarks =>
  Object.fromEntries(joints.map((joint) => [joint, AT]));
const SIDE = marked(quickSet("side"));
const FRONT = marked(quickSet("front"));

/** A strip as a picture: "s" the side view's quick set is done, "f" the front's, "b" both, "." none. */
function strip(picture: string): Panel[] {
  return [...picture].map((done, at) => ({
    ...{ id: `${at}`, frame: at + 1, hold: 0, pose: "contact", weightOn: null, place: null },
    marks: {
      side: done === "s" || done === "b" ? SIDE : {},
      front: done === "f" || done === "b" ? FRONT : {},
    },
    ink: { side: [], front: [] },
    toRedraw: { side: false, front: false },
    pictures: { side: null, front: null },
  }));
}

describe("where the prompt goes once a view is done", () => {
  it.each([
    { picture: "s...", from: "0", to: "1", says: "the next panel" },
    { picture: "ssb.", from: "0", to: "3", says: "past those that have it" },
    { picture: "..s.", from: "2", to: "3", says: "on, not back" },
    { picture: ".sss", from: "3", to: "0", says: "round to the first that lacks it" },
  ])("goes to $says: $picture from $from", ({ picture, from, to }) => {
    const next = whereNext(strip(picture), { panel: from, view: "side" }, "next-panel");
    expect(next).toEqual({ panel: to, view: "side" });
  });

  it("stays with the view: front views follow front views", () => {
    const next = whereNext(strip("b.ff"), { panel: "0", view: "front" }, "next-panel");
    expect(next).toEqual({ panel: "1", view: "front" });
  });

  it("ends when every panel has the view's quick set", () => {
    expect(whereNext(strip("ssb"), { panel: "2", view: "side" }, "next-panel")).toBeNull();
  });

  it("goes by both views of a panel where that is wished, the side first", () => {
    const both = (picture: string, panel: string, view: "side" | "front") =>
      whereNext(strip(picture), { panel, view }, "other-view");
    expect(both("s..", "0", "side")).toEqual({ panel: "0", view: "front" });
    expect(both("b..", "0", "front")).toEqual({ panel: "1", view: "side" });
    expect(both("bs.", "0", "front")).toEqual({ panel: "1", view: "front" });
    expect(both("bbb", "2", "front")).toBeNull();
  });
});

describe("what the prompt asks for", () => {
  it("is the next of the quick set, and nothing once that is done", () => {
    expect(promptedJoint(marked(["right-hip"]), "side", null)).toBe("left-hip");
    expect(promptedJoint(SIDE, "side", null)).toBeNull();
  });

  it("is the joint that was chosen, while it is not marked", () => {
    expect(promptedJoint(SIDE, "side", "head")).toBe("head");
    expect(promptedJoint(SIDE, "side", "left-toe")).toBeNull();
  });

  it("leaves to accept at once what the quick set lacks, and no finer mark", () => {
    expect(leftOfQuickSet(marked(["right-hip", "left-hip", "head"]), "front")).toEqual([
      ...["right-heel", "left-heel", "right-toe", "left-toe"],
    ]);
  });
});
