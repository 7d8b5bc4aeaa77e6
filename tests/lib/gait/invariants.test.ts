import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Answer, COMMON_YARDSTICKS, reviewWalk, type Walk } from "../../../lib/gait";
import reference from "../../reference/captured-strides.json";
import { LEG } from "../../support/built-poses";
import { capturedWalk } from "../../support/captured";
import { changeMarks, redrawn, turnedOver } from "../../support/changed-marks";
import { mirroredWalk, mirrorWord } from "../../support/mirrored-walk";
import { roughWalk } from "../../support/rough-walk";
import { sameWhenSwitched } from "../../support/switched";
import { remarksOf } from "../../support/told-remarks";
import { lift, type PanelName, raise, walk } from "../../support/walk";

const yardsticks = fc.constantFrom(...COMMON_YARDSTICKS);

describe("a walk", () => {
  it("is rough enough here to draw remarks of every check", () => {
    const [sample] = fc.sample(fc.array(roughWalk, { minLength: 40, maxLength: 40 }), {
      numRuns: 1,
      seed: 7,
    });
    const seen = new Set(
      sample?.flatMap((one) => reviewWalk(one, "trade").remarks.map(({ check }) => check)),
    );
    expect([...seen].sort()).toEqual([
      "float",
      "foot-roll",
      "gaps",
      "hip-order",
      "hip-range",
      "hitch",
      "knee",
      "limb-length",
      "loop",
      "missing-pose",
      "pose-order",
      "reach",
      "sink",
      "slide",
      "symmetry",
      "tempo",
      "weight-front",
      "weight-side",
    ]);
  });

  it("draws mirrored remarks when left and right change places", () => {
    fc.assert(
      fc.property(roughWalk, yardsticks, (rough, yardstick) => {
        const expected = remarksOf(rough, yardstick).map(mirrorWord).toSorted();
        expect(remarksOf(mirroredWalk(rough), yardstick)).toEqual(expected);
      }),
      { numRuns: 50 },
    );
  });

  it("draws the same remarks drawn larger, smaller or further along", () => {
    const size = fc.integer({ min: 30, max: 180 }).map((percent) => percent / 100);
    const shift = fc.integer({ min: -200, max: 200 });
    fc.assert(
      fc.property(roughWalk, yardsticks, size, shift, (rough, yardstick, scale, along) => {
        expect(remarksOf(redrawn(rough, scale, along), yardstick)).toEqual(
          remarksOf(rough, yardstick),
        );
      }),
      { numRuns: 50 },
    );
  });

  it("names the same of two poses as high, and takes the same heel for a raised one, at every size", () => {
    const as = hipsOf(walk(), "left up") - hipsOf(walk(), "left passing");
    const high = raise(raise(walk(), "left up", 0.06), "left passing", 0.06 - as / LEG);
    const onTip = lift(walk(), "right passing", ["right-toe", "right-ball"], -0.028);
    const tipped = lift(onTip, "right passing", ["right-heel"], -0.008);
    for (const drawn of [high, tipped]) {
      const expected = remarksOf(drawn, "trade");
      expect(expected).not.toEqual([]);
      for (let percent = 30; percent <= 180; percent++) {
        expect(remarksOf(redrawn(drawn, percent / 100, 7), "trade")).toEqual(expected);
      }
    }
  });

  it("draws the same remarks on the spot and travelling", () => {
    const places = fc.array(fc.integer({ min: -300, max: 300 }), { minLength: 10, maxLength: 10 });
    fc.assert(
      fc.property(roughWalk, yardsticks, places, (rough, yardstick, shifts) => {
        const by = new Map(rough.panels.map(({ id }, index) => [id, (shifts[index] ?? 0) / 1000]));
        const moved = changeMarks(rough, (mark, _joint, { id }, view) => ({
          ...mark,
          x: view === "front" ? mark.x : mark.x - (by.get(id) ?? 0) * 420,
        }));
        const panels = moved.panels.map((panel) => ({
          ...panel,
          place: (panel.place ?? rough.advance * (panel.frame - 1)) + (by.get(panel.id) ?? 0),
        }));
        const travelling: Walk = { ...moved, panels, travel: "travelling", advance: 0 };
        expect(remarksOf(travelling, yardstick)).toEqual(remarksOf(rough, yardstick));
      }),
      { numRuns: 50 },
    );
  });

  it("draws the same remarks when its travel is switched, there and back (seed 61)", () => {
    const places = fc.array(fc.integer({ min: -300, max: 300 }), { minLength: 10, maxLength: 10 });
    fc.assert(
      fc.property(roughWalk, yardsticks, places, (rough, yardstick, shifts) => {
        const panels = rough.panels.map((panel, index) => ({
          ...panel,
          place: rough.advance * (panel.frame - 1) + (shifts[index] ?? 0) / 1000,
        }));
        sameWhenSwitched({ ...rough, panels, travel: "travelling" }, yardstick);
      }),
      { numRuns: 60, seed: 61 },
    );
  });

  it.each(reference.walks)(
    "draws the same remarks switched where it was captured: $clip",
    (clip) => {
      for (const yardstick of COMMON_YARDSTICKS) sameWhenSwitched(capturedWalk(clip), yardstick);
    },
  );

  it("reads the same over a page that is turned, but for the sign of x (seed 62)", () => {
    fc.assert(
      fc.property(roughWalk, yardsticks, (rough, yardstick) => {
        const left = turnedOver(rough); // as one draws whose walker goes to the page's left
        const [there, here] = [reviewWalk(left, yardstick), reviewWalk(rough, yardstick)];
        for (const [index, { length, width, hipHeights }] of here.stepReadings.entries()) {
          const turned = there.stepReadings[index];
          expect(toldBy(turned?.length)).toBeCloseTo(-toldBy(length), 9);
          expect(turned?.width).toEqual(width);
          expect(turned?.hipHeights).toEqual(hipHeights);
        }
        expect(remarksOf(turnedOver(left), yardstick)).toEqual(remarksOf(rough, yardstick));
      }),
      { numRuns: 30, seed: 62 },
    );
  });
});

const hipsOf = ({ panels }: Walk, name: PanelName) =>
  panels.find(({ id }) => id === name)?.marks.side["left-hip"]?.y ?? Number.NaN;

const toldBy = (answer: Answer | undefined) => (answer?.kind === "value" ? answer.value : 0);
