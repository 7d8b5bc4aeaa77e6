import { existsSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { fixFor, reviewWalk, type Walk } from "../../../../lib/gait";
import { CAPTURED_POSES, capturedClips } from "../../../support/captured-clips";
import { lift, unmark, walk } from "../../../support/walk";

const FOOT = ["right-ankle", "right-heel", "right-ball", "right-toe"] as const;
const toLeft = (judged: Walk) =>
  reviewWalk(judged, "life").findings.find(
    ({ check, side }) => check === "clearance" && side === "right",
  );
/** The swing toe of the left passing stands 12 % of a leg over the ground; it is put there instead. */
const toeAt = (legs: number, kind: Walk["kind"] = "plain") =>
  lift(walk({ kind }), "left passing", FOOT, legs - 0.12);

describe("the swing toe", () => {
  it("reads its height at passing, and is sound where people carry it", () => {
    expect(toLeft(toeAt(0.034))).toMatchObject({ kind: "sound", measured: { unit: "leg" } });
    const found = toLeft(toeAt(0.034));
    expect(found?.kind === "sound" && found.measured?.value).toBeCloseTo(0.034, 9);
  });

  it.each([
    [-0.02, "may-show"],
    [-0.04, "shows"],
  ])("drags at %f of a leg: %s", (legs, level) => {
    expect(toLeft(toeAt(legs))).toMatchObject({
      kind: "remark",
      level,
      panels: ["left passing"],
      spots: [{ panel: "left passing", view: "side", joints: ["right-toe"] }],
      title: "Right toe drags",
    });
  });

  it.each([-0.005, 0, 0.12])(
    "passes at %f, at half of either limit and at the upper one",
    (legs) => {
      expect(toLeft(toeAt(legs))?.kind).toBe("sound");
    },
  );

  it("is told where it shows, not where it is farther beyond a lesser limit", () => {
    const exact = lift(walk({ precision: 0 }), "left passing", FOOT, -0.021 - 0.12);
    const upAt = 0.12 * Math.sin(Math.PI * 0.75); // where the built walk has the foot at its up
    const both = lift(exact, "left up", FOOT, -0.0195 - upAt);
    expect(toLeft(both)).toMatchObject({ level: "shows", panels: ["left passing"] });
  });

  it("is lifted high at 18 % of a leg, unless the walk is a march or a sneak", () => {
    expect(toLeft(toeAt(0.18))).toMatchObject({
      level: "may-show",
      title: "Right foot lifted high",
    });
    expect(toLeft(toeAt(0.18, "march"))).toBeUndefined();
    expect(toLeft(toeAt(0.18, "sneak"))).toBeUndefined();
  });

  it("cannot be told without a mark on it", () => {
    const blind = unmark(walk(), "left passing", ["right-toe", "right-ball"]);
    expect(toLeft(blind)).toMatchObject({
      kind: "cannot-tell",
      needs: expect.stringMatching(/toe/),
    });
  });

  it.each([-0.04, 0.18])("is brought to where people carry it by its fix, from %f", (legs) => {
    const judged = toeAt(legs);
    const found = toLeft(judged);
    if (found?.kind !== "remark") throw new Error("no remark");
    expect(fixFor(judged, found)?.title).toMatch(
      /^(Raise|Lower) the right foot by \d+\.\d % of a leg/,
    );
  });
});

describe.skipIf(!existsSync(CAPTURED_POSES))("captured swing toes", () => {
  it("drag or are lifted in no walk, by the soles' own ±", () => {
    const told = capturedClips()
      .filter(({ truth }) => truth.plain)
      .flatMap(({ walk: captured }) => reviewWalk(captured, "life").findings)
      .filter(({ check }) => check === "clearance");
    expect(told.length).toBeGreaterThan(20);
    expect(new Set(told.map(({ kind }) => kind))).toEqual(new Set(["sound"]));
  });
});
