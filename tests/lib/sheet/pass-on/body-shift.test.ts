import { describe, expect, it } from "vitest";
import { limbJoint, SIDES } from "../../../../lib/body";
import { bodyShift } from "../../../../lib/sheet";
import {
  FEET,
  LEG,
  mark,
  panelAt,
  passed,
  capturedSheet as sheet,
} from "../../../support/captured-panels";
import { expectLegsKept } from "../../../support/legs-kept";

describe("a body shifted", () => {
  const STILL = { forward: 0, up: 0, aside: 0 };

  it("lowers hips and all above, the feet kept and the legs as long as they were", () => {
    for (const panel of sheet.panels) {
      const now = passed(panel, bodyShift(panel, { ...STILL, up: -0.04 * LEG }));
      for (const joint of FEET) {
        expect(now.side[joint]).toEqual(panel.marks.side[joint]);
        expect(now.front[joint]).toEqual(panel.marks.front[joint]);
      }
      for (const joint of ["head", "left-hip", "right-wrist"] as const) {
        for (const view of ["side", "front"] as const) {
          const was = panel.marks[view][joint];
          if (was === undefined) continue;
          expect(mark(now[view], joint).y).toBeCloseTo(was.y + 0.04 * LEG, 0);
          expect(mark(now[view], joint).x).toBeCloseTo(was.x, 0);
        }
      }
      expectLegsKept(panel.marks.side, now.side);
    }
  });

  it("has the front view's knees at the side view's heights", () => {
    const panel = panelAt("passing", "left");
    const now = passed(panel, bodyShift(panel, { ...STILL, up: -0.05 * LEG }));
    for (const side of SIDES) {
      const knee = limbJoint(side, "knee");
      expect(mark(now.front, knee).y).toBeCloseTo(mark(now.side, knee).y, 0);
    }
  });

  it("shifts the hips aside from ahead, and knees by their share of the leg", () => {
    const panel = panelAt("passing", "left");
    const now = passed(panel, bodyShift(panel, { ...STILL, aside: 40 }));
    expect(now.side).toEqual(panel.marks.side);
    expect(mark(now.front, "left-hip").x).toBeCloseTo(
      mark(panel.marks.front, "left-hip").x + 40,
      0,
    );
    const knee = mark(now.front, "left-knee").x - mark(panel.marks.front, "left-knee").x;
    expect(knee).toBeGreaterThan(15);
    expect(knee).toBeLessThan(30);
  });

  it("does not stretch a leg: it says by how much it would have to be longer", () => {
    const given = bodyShift(panelAt("contact", "left"), { ...STILL, up: 0.2 * LEG });
    expect(given.kind === "cannot" ? given.why : "").toMatch(/would have to be [\d.]+ % of a leg/);
  });

  it("needs hips", () => {
    const panel = { ...panelAt("up", "left"), marks: { side: {}, front: {} } };
    expect(bodyShift(panel, { ...STILL, up: 5 })).toEqual({
      kind: "cannot-tell",
      needs: "the hips marked",
    });
  });
});
