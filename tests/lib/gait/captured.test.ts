import { existsSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { hipHeight, kneeBend, reviewWalk, walkLegLength } from "../../../lib/gait";
import reference from "../../reference/captured-strides.json";
import rates from "../../reference/trip-rates.json";
import { capturedWalk } from "../../support/captured";
import { CAPTURED_POSES, capturedClips } from "../../support/captured-clips";

/** Rules that no captured step trips, by check. */
const never = new Set(rates.rules.filter(({ rate }) => rate === 0).map(({ check }) => check));

describe.each(reference.walks)("captured walk $clip", (captured) => {
  const review = reviewWalk(capturedWalk(captured), "life");

  it("shows nothing by life", () => {
    expect(review.remarks.filter(({ level }) => level === "shows")).toEqual([]);
    expect(review.cannotTell).toEqual([]);
  });

  it.each([0, 1])("has the published hip heights in step %i", (nth) => {
    const truth = captured.steps[nth]?.truth.hipOverContact ?? fail();
    const heights = review.stepReadings[nth]?.hipHeights ?? fail();
    for (const pose of ["down", "passing", "up"] as const) {
      // The truth is filtered before it is read, the points are not: up to 0.15 % of a leg apart.
      expect(Math.abs(told(heights[pose]) - told(heights.contact) - truth[pose])).toBeLessThan(
        0.0015,
      );
    }
  });

  it.each([0, 1])("has the published travel of the planted foot in step %i", (nth) => {
    const { truth } = captured.steps[nth] ?? fail();
    const side = review.steps[nth]?.weightOn ?? fail();
    const [ball, heel] = review.findings.filter(
      (finding) => finding.check === "slide" && finding.side === side,
    );
    const leg = captured.legLength;
    // The leg is read from foreshortened marks, up to 0.4 % short: 0.1 % of a leg along the ground.
    expect(Math.abs(measuredOf(ball) - truth.ballDownToPassing / leg)).toBeLessThan(0.002);
    expect(Math.abs(measuredOf(heel))).toBeLessThan(0.05);
  });

  it.each([0, 1])("passes when the published walker does in step %i", (nth) => {
    const { truth } = captured.steps[nth] ?? fail();
    const found = review.findings.filter(({ check, side }) => check === "gaps" && side !== null)[
      nth
    ];
    expect(measuredOf(found)).toBeCloseTo(truth.passing, 4);
    expect(review.stepReadings[nth]?.duration).toBe(truth.frames);
  });

  it("has the published step length where both feet are seen flat", () => {
    const truth = (captured.steps[0]?.truth.stepLength ?? fail()) / captured.legLength;
    const length = told(review.stepReadings[0]?.length ?? fail());
    expect(Math.abs(length - truth)).toBeLessThan(0.01);
    expect(review.stepReadings[0]?.length).toMatchObject({ plusMinus: 0 }); // by the ankles, not the soles
  });

  it("has the published step width there", () => {
    const truth = (captured.steps[0]?.truth.stepWidth ?? fail()) / captured.legLength;
    const width = told(review.stepReadings[0]?.width ?? fail());
    expect(Math.abs(width - truth)).toBeLessThan(0.01);
  });

  it.each([0, 1])("bends the standing knee as published in step %i", (nth) => {
    const { truth } = captured.steps[nth] ?? fail();
    const step = review.steps[nth] ?? fail();
    const bend = kneeBend(step.passing?.marks.side ?? fail(), step.weightOn ?? fail());
    // The published angle is taken in space, ours in the side view.
    expect((told(bend) * 180) / Math.PI).toBeCloseTo(truth.stanceKneeDegrees, -1);
  });
});

describe("captured hips", () => {
  it("stand where the points say, in leg lengths of the panel", () => {
    const walk = capturedWalk(reference.walks[0] ?? fail());
    const [panel] = walk.panels;
    const height = told(hipHeight(panel ?? fail(), walkLegLength(walk)));
    expect(height).toBeCloseTo((0.7839 + 0.8107) / 2 / 0.87135, 2);
  });
});

describe.skipIf(!existsSync(CAPTURED_POSES))("every plain captured walk", () => {
  const walks = capturedClips()
    .filter(({ truth }) => truth.plain)
    .map(({ clip, captured }) => ({ clip, walk: captured }));

  it("is there", () => {
    expect(walks.length).toBeGreaterThanOrEqual(5);
  });

  it("shows nothing by life from a rule that no captured step trips", () => {
    for (const { clip, walk } of walks) {
      const { remarks } = reviewWalk(capturedWalk(walk), "life");
      const shown = remarks.filter(({ level, check }) => level === "shows" && never.has(check));
      expect(shown.map(({ why }) => `${clip}: ${why}`)).toEqual([]);
    }
  });

  it("draws at most one remark a stride on average", () => {
    const drawn = walks.map(({ walk }) => reviewWalk(capturedWalk(walk), "life"));
    const remarks = drawn.reduce((sum, review) => sum + review.remarks.length, 0);
    const steps = drawn.reduce((sum, review) => sum + review.steps.length, 0);
    expect(remarks / (steps / 2)).toBeLessThanOrEqual(1);
  });

  it("cannot escape a judgement: nothing is left untold", () => {
    for (const { walk } of walks)
      expect(reviewWalk(capturedWalk(walk), "life").cannotTell).toEqual([]);
  });
});

function told(answer: { readonly kind: string; readonly value?: number }): number {
  return answer.value ?? Number.NaN;
}

function measuredOf(finding: unknown): number {
  const { measured } = finding as { measured?: { value: number } };
  return measured?.value ?? Number.NaN;
}

function fail(): never {
  throw new Error("the reference lacks what this test reads");
}
