import { describe, expect, it } from "vitest";
import { type JointName, limbJoint, type Side, sideToGround } from "../../../../lib/body";
import { reviewWalk, walkLegLength } from "../../../../lib/gait";
import { footOnPrint, type Panel, type Sheet, walkOf } from "../../../../lib/sheet";
import {
  FEET,
  LEG,
  mark,
  panelAt,
  passed,
  capturedSheet as sheet,
} from "../../../support/captured-panels";
import { expectLegsKept } from "../../../support/legs-kept";

/** The sheet with one panel's foot slid along the ground, its knee left where it was. */
function slid(panel: Panel, side: Side, units: number): Sheet {
  const foot = FEET.filter((joint) => joint.startsWith(side));
  const moved = Object.fromEntries(
    foot.map((joint) => {
      const { x, ...rest } = mark(panel.marks.side, joint);
      return [joint, { ...rest, x: x + units }];
    }),
  );
  const marks = { ...panel.marks, side: { ...panel.marks.side, ...moved } };
  return {
    ...sheet,
    panels: sheet.panels.map((one) => (one === panel ? { ...panel, marks } : one)),
  };
}

describe("a foot put on its footprint", () => {
  const leg = walkLegLength(walkOf(sheet));
  const legLength = leg.kind === "value" ? leg.value : Number.NaN;
  const groundX = (from: Sheet, panel: Panel, joint: JointName) => {
    const place = panel.place ?? from.head.advance * (panel.frame - 1);
    return sideToGround(mark(panel.marks.side, joint), { place, legLength }).x;
  };

  it.each(["left", "right"] as const)("ends the %s foot's slide, the knee solved", (side) => {
    const passing = panelAt("passing", side);
    const slipped = slid(passing, side, -0.1 * LEG);
    const slides = (from: Sheet) =>
      reviewWalk(walkOf(from), "life").remarks.filter((one) => one.check === "slide");
    expect(slides(slipped).map((one) => one.side)).toEqual([side]);

    const panel = panelAt("passing", side, slipped);
    const now = passed(panel, footOnPrint(slipped, panel.id, side));
    const mended: Sheet = {
      ...slipped,
      panels: slipped.panels.map((one) => (one === panel ? { ...panel, marks: now } : one)),
    };
    expect(slides(mended)).toEqual([]);
    const down = panelAt("down", side, mended);
    const ball = limbJoint(side, "ball");
    expect(groundX(mended, panelAt("passing", side, mended), ball)).toBeCloseTo(
      groundX(mended, down, ball),
      3, // marks are kept to a hundredth of a unit, 0.00002 of a leg
    );
    expectLegsKept(panel.marks.side, now.side);
    expect(now.side[limbJoint(side, "hip")]).toEqual(panel.marks.side[limbJoint(side, "hip")]);
  });

  it("goes by the heel on the down, which rolls over it", () => {
    const down = panelAt("down", "left");
    const slipped = slid(down, "left", 0.05 * LEG);
    const panel = panelAt("down", "left", slipped);
    const now = passed(panel, footOnPrint(slipped, panel.id, "left"));
    const mended = { ...panel, marks: now };
    expect(groundX(slipped, mended, "left-heel")).toBeCloseTo(
      groundX(slipped, panelAt("contact", "left", slipped), "left-heel"),
      3,
    );
  });

  it("says why not: put down here, in the air, or out of reach", () => {
    const why = (from: Sheet, panel: Panel, side: Side) => {
      const given = footOnPrint(from, panel.id, side);
      return given.kind === "cannot" ? given.why : given.kind;
    };
    expect(why(sheet, panelAt("contact", "left"), "left")).toMatch(/this is its footprint/);
    expect(why(sheet, panelAt("passing", "left"), "right")).toMatch(/not told to be planted/);
    const far = slid(panelAt("down", "left"), "left", 0.9 * LEG);
    expect(why(far, panelAt("passing", "left", far), "left")).toMatch(
      /the left leg would have to be [\d.]+ % of a leg longer/,
    );
  });
});
