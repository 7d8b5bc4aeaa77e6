import { describe, expect, it } from "vitest";
import { draggedPose, pinnedFeet } from "../../../app/_marks/dragged-pose";
import { type JointName, markOf, type ViewMarks } from "../../../lib/body";
import { distance } from "../../../lib/geometry";
import { capturedExample, type InkStroke, type Panel } from "../../../lib/sheet";
import { ids } from "../../support/peers";

const [CONTACT, DOWN, PASSING] = capturedExample(ids()).panels as [Panel, Panel, Panel];
const STROKE = { id: "a" } as InkStroke;
const inked = (panel: Panel): Panel => ({ ...panel, ink: { side: [STROKE], front: [] } });
const at = (marks: ViewMarks, joint: JointName) => {
  const mark = markOf(marks, joint);
  if (mark === null) throw new Error(`no ${joint}`);
  return mark;
};
const options = { view: "side", precision: 6, whole: true } as const;
const hip = at(PASSING.marks.side, "left-hip");
const lowered = { joint: "left-hip", to: { x: hip.x, y: hip.y + 20 }, swapped: false } as const;

describe("a mark that is dragged", () => {
  it("moves alone, as exactly as the hand is now", () => {
    const { side, front } = draggedPose(PASSING, lowered, { ...options, whole: false });
    expect(side).toEqual({ ...PASSING.marks.side, "left-hip": { ...lowered.to, precision: 6 } });
    expect(front).toEqual(PASSING.marks.front);
  });

  it("takes the figure along: the standing foot stays, lengths too, the front view follows", () => {
    const { side, front } = draggedPose(PASSING, lowered, options);
    for (const part of ["heel", "ball", "toe", "ankle"] as const) {
      expect(side[`left-${part}`]).toEqual(PASSING.marks.side[`left-${part}`]);
    }
    const thigh = (marks: ViewMarks) => distance(at(marks, "left-hip"), at(marks, "left-knee"));
    const leg = 420; // panel units
    expect(Math.abs(thigh(side) - thigh(PASSING.marks.side))).toBeLessThan(0.005 * leg);
    const sank = at(front, "left-hip").y - at(PASSING.marks.front, "left-hip").y;
    expect(sank).toBeCloseTo(20, 1);
  });

  it.each(["left-hip", "left-knee"] as const)(
    "leaves the standing foot however far its %s is pulled, and stops where the leg ends",
    (joint) => {
      const { x, y } = at(PASSING.marks.side, joint);
      const far = { joint, to: { x: x - 150, y: y - 150 }, swapped: false };
      const { side } = draggedPose(PASSING, far, options);
      expect(side["left-heel"]).toEqual(PASSING.marks.side["left-heel"]);
      expect(side["left-ankle"]).toEqual(PASSING.marks.side["left-ankle"]);
    },
  );

  it("is, over ink, no more exact than the hand that pulled it; without ink it is where it is", () => {
    const over = draggedPose(inked(PASSING), lowered, options).side;
    expect(at(over, "left-hip").precision).toBe(6);
    expect(at(over, "left-knee").precision).toBe(6);
    expect(at(over, "left-toe").precision).toBe(at(PASSING.marks.side, "left-toe").precision);
    const bare = draggedPose(PASSING, lowered, options).side;
    expect(at(bare, "left-knee").precision).toBe(at(PASSING.marks.side, "left-knee").precision);
  });
});

describe("the feet that a pull leaves", () => {
  it("are both at a contact and the carrying one else", () => {
    expect(pinnedFeet(CONTACT, "left-hip")).toEqual(["left", "right"]);
    expect(pinnedFeet(DOWN, "left-hip")).toEqual(["left"]);
    expect(pinnedFeet({ ...DOWN, weightOn: null }, "left-hip")).toEqual([]);
  });

  it("are without the one that is taken hold of itself", () => {
    expect(pinnedFeet(CONTACT, "left-toe")).toEqual(["right"]);
    expect(pinnedFeet(DOWN, "left-heel")).toEqual([]);
    expect(pinnedFeet(DOWN, "left-knee")).toEqual(["left"]);
  });
});
