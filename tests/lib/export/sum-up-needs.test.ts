import { describe, expect, it } from "vitest";
import { sumUpNeeds } from "../../../lib/export";
import { type CannotTell, type CheckId, reviewWalk } from "../../../lib/gait";
import { unmark, walk } from "../../support/walk";

const LEG_JOINTS = ["hip", "knee", "ankle", "heel", "ball", "toe"] as const;

const unmarked = () => {
  const drawn = walk();
  const panels = drawn.panels.map((panel) => ({ ...panel, marks: { side: {}, front: {} } }));
  return { ...drawn, panels };
};

const lacking = (check: CheckId, needs: string, ...panels: string[]): CannotTell => ({
  ...{ kind: "cannot-tell", check, side: null },
  ...{ panels, needs },
});

describe("what cannot be told", () => {
  it("says each need once, with every question that waits for it", () => {
    const { cannotTell } = reviewWalk(unmarked(), "trade");
    const needs = sumUpNeeds(cannotTell);
    expect(needs.length).toBeLessThan(cannotTell.length);
    expect(new Set(needs.map((need) => need.needs)).size).toBe(needs.length);
    const checks = needs.flatMap((need) => need.checks);
    expect(checks).toContain("hip-order");
    expect(checks).toContain("slide");
  });

  it("stays short, whatever was not marked", () => {
    expect(sumUpNeeds(reviewWalk(unmarked(), "trade").cannotTell).length).toBeLessThanOrEqual(12);
  });

  it("names only what is missing", () => {
    const far = LEG_JOINTS.map((joint) => `right-${joint}` as const);
    const { cannotTell } = reviewWalk(unmark(walk(), "right passing", far), "trade");
    const needs = sumUpNeeds(cannotTell).map((need) => need.needs);
    expect(needs.join()).toMatch(/right (ball|heel)/);
    expect(needs.join()).not.toMatch(/left (ball|heel)/);
  });

  it("says what lacks on both sides once, and at several frames once", () => {
    const found = [
      lacking("slide", "the left ball marked at its down", "a"),
      lacking("clearance", "the right ball marked at its down", "b"),
      lacking("gaps", "the right foot's contact after frame 13"),
      lacking("gaps", "the right foot's contact after frame 37"),
      lacking("gaps", "the right foot's contact after frame 9"),
    ];
    expect(sumUpNeeds(found)).toEqual([
      {
        needs: "the right foot's contact after frames 9, 13 and 37",
        checks: ["gaps"],
        panel: null,
      },
      {
        needs: "the ball marked at its down, left and right",
        checks: ["slide", "clearance"],
        panel: "a",
      },
    ]);
  });

  it("leaves a need as it stands where only one place lacks it, or it names both sides itself", () => {
    const found = [
      lacking("width", "the left ankle and the right heel"),
      lacking("width", "the right ankle and the left heel"),
      lacking("slide", "the left ball after frame 4"),
    ];
    expect(sumUpNeeds(found).map(({ needs }) => needs)).toEqual(found.map(({ needs }) => needs));
  });
});
