import { existsSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { type Answer, type PanelReadingId, reviewWalk } from "../../../../lib/gait";
import { CAPTURED_POSES, type CapturedClip, capturedClips } from "../../../support/captured-clips";

/**
 * What the truth adds to the readings' own ±, leg lengths unless said. It is read off motion that was filtered
 * at 6 Hz, in legs of the skeleton; the readings are of unfiltered points, in legs told by foreshortened marks,
 * up to 0.5 % short.
 */
const TRUTH = {
  height: 0.005, // 0.5 % of the hips' height, and the filter's 0.15 %
  length: 0.005, // where a foot stands is its mean over its flat time there, its passing here
  width: 0.008, // the same; feet turn as they stand
  shift: 0.003,
  range: 0.0025,
  sway: 0.012, // four poses a step miss the farthest moment: always less than the truth
  speed: 0.009, // leg lengths a second
  stride: 0.031, // told there by the pelvis' travel, which is not steady
  knee: 0.018, // radians (1°): taken in space there, in the drawn plane here
} as const;

const clips = capturedClips();
const walks = clips.filter(({ clip }) => clip !== "16_36");

interface Read {
  readonly clip: string;
  readonly answer: Answer | undefined;
  readonly truth: number | undefined;
}

/** Every reading that has a truth lies within its own ± and what the truth adds. */
function expectTrue(reads: readonly Read[], adds: number, least: number) {
  const known = reads.filter(({ truth }) => truth !== undefined);
  expect(known.length).toBeGreaterThanOrEqual(least);
  for (const { clip, answer, truth = Number.NaN } of known) {
    if (answer?.kind !== "value") throw new Error(`${clip}: cannot tell: ${answer?.needs}`);
    const off = Math.abs(answer.value - truth) - answer.plusMinus;
    expect(off, `${clip}: read ${answer.value} ± ${answer.plusMinus}, true ${truth}`).toBeLessThan(
      adds,
    );
  }
}

const reviewOf = ({ walk }: CapturedClip) => reviewWalk(walk, "life");
type Step = ReturnType<typeof reviewWalk>["stepReadings"][number];
type Truth = CapturedClip["truth"]["steps"][number];

function ofSteps(
  from: readonly CapturedClip[],
  read: (step: Step) => Answer,
  true_: (truth: Truth, leg: number) => number | undefined,
): Read[] {
  return from.flatMap((one) =>
    reviewOf(one).stepReadings.map((step, n) => {
      const truth = one.truth.steps[n];
      return {
        clip: one.clip,
        answer: read(step),
        truth: truth && true_(truth, one.truth.leg_length),
      };
    }),
  );
}

function ofPoses(
  from: readonly CapturedClip[],
  id: PanelReadingId,
  at: { readonly pose: "contact" | "passing"; readonly foot: "standing" | "swinging" | null },
  true_: (truth: Truth, leg: number) => number | undefined,
): Read[] {
  return from.flatMap((one) => {
    const { steps, readingsByPanel } = reviewOf(one);
    return steps.map((step, n) => {
      const swinging = step.weightOn === "left" ? "right" : "left";
      const side = at.foot === "standing" ? step.weightOn : at.foot === null ? null : swinging;
      const told = readingsByPanel
        .get(step[at.pose]?.id ?? "")
        ?.find((reading) => reading.id === id && (side === null || reading.side === side))?.answer;
      const truth = one.truth.steps[n];
      return {
        clip: one.clip,
        answer: told?.kind === "yes-no" ? undefined : told,
        truth: truth && true_(truth, one.truth.leg_length),
      };
    });
  });
}

describe.skipIf(!existsSync(CAPTURED_POSES))("every captured step", () => {
  it("is as long and as wide as its feet stand", () => {
    const per = (value: number | undefined, leg: number) => value && value / leg;
    expectTrue(
      ofSteps(
        walks,
        ({ length }) => length,
        (t, leg) => per(t.step_length, leg),
      ),
      TRUTH.length,
      20,
    );
    expectTrue(
      ofSteps(
        walks,
        ({ width }) => width,
        (t, leg) => per(t.step_width, leg),
      ),
      TRUTH.width,
      20,
    );
  });

  it("goes as fast", () => {
    const speed = (t: Truth, leg: number) =>
      t.step_length && t.step_length / leg / (t.frames / 120);
    expectTrue(
      ofSteps(walks, (step) => step.speed, speed),
      TRUTH.speed,
      20,
    );
  });

  it.each(["contact", "down", "passing", "up"] as const)(
    "has its hips as high at the %s, the jog's too",
    (pose) => {
      expectTrue(
        ofSteps(
          clips,
          ({ hipHeights }) => hipHeights[pose],
          (t, leg) => t.hip_y[pose] / leg,
        ),
        TRUTH.height,
        31,
      );
    },
  );

  it("has its hips' range, and their shift toward the foot that carries", () => {
    const range = ({ hip_y }: Truth, leg: number) =>
      (Math.max(...Object.values(hip_y)) - Math.min(...Object.values(hip_y))) / leg;
    expectTrue(
      ofSteps(clips, ({ hipRange }) => hipRange, range),
      TRUTH.range,
      31,
    );
    const shift = ({ passing_pose: { hip_shift_to_support: by } }: Truth, leg: number) =>
      by && by / leg;
    expectTrue(
      ofSteps(walks, ({ hipShift }) => hipShift, shift),
      TRUTH.shift,
      20,
    );
  });

  it("has both feet down as long as the events say, within what people differ by", () => {
    expectTrue(
      ofSteps(
        walks,
        (step) => step.doubleSupport,
        (t) => t.double_support_frac,
      ),
      0,
      28,
    );
    expect(
      walks
        .flatMap((one) => reviewOf(one).stepReadings)
        .every(({ flight }) => flight.kind === "value" && flight.value === 0),
    ).toBe(true);
  });

  it("has flight in the jog alone", () => {
    const jog = clips
      .filter(({ clip }) => clip === "16_36")
      .flatMap((one) => reviewOf(one).stepReadings);
    expect(
      jog.filter(({ flight }) => flight.kind === "value" && flight.value > 0).length,
    ).toBeGreaterThan(0);
  });

  it("has its centre of mass as high and as far ahead of the ankle, within what tables differ by", () => {
    const height = (pose: "contact" | "passing") => (t: Truth, leg: number) => t.com_y[pose] / leg;
    const anywhere = (pose: "contact" | "passing") => ({ pose, foot: null }) as const;
    for (const pose of ["contact", "passing"] as const) {
      expectTrue(ofPoses(clips, "mass-height", anywhere(pose), height(pose)), 0, 31);
    }
    const ahead = ({ passing_pose: { com_ahead_of_ankle: by } }: Truth, leg: number) =>
      by && by / leg;
    expectTrue(ofPoses(clips, "mass-ahead", anywhere("passing"), ahead), 0, 31);
  });

  it("clears the ground with its toe, and bends its knees, as far", () => {
    const swings = { pose: "passing", foot: "swinging" } as const;
    const stands = { pose: "passing", foot: "standing" } as const;
    const toe = ({ passing_pose: { swing_toe_height: up } }: Truth, leg: number) => up && up / leg;
    expectTrue(ofPoses(clips, "toe-height", swings, toe), 0, 31);
    const radians = (degrees: number | undefined) => degrees && (degrees * Math.PI) / 180;
    expectTrue(
      ofPoses(clips, "knee-bend", stands, (t) => radians(t.passing_pose.stance_knee_flexion_deg)),
      TRUTH.knee,
      31,
    );
    expectTrue(
      ofPoses(clips, "knee-bend", swings, (t) => radians(t.passing_pose.swing_knee_flexion_deg)),
      TRUTH.knee,
      31,
    );
  });

  it("is part of a stride as long, with its feet as long down and its hips as far aside", () => {
    const strides = walks.flatMap((one) => {
      const { strideReadings, steps } = reviewOf(one);
      return strideReadings.flatMap((stride, n) => {
        const from = steps[2 * n]?.contact.frame;
        const truth = one.truth.strides.find((known) => known.from === from);
        return truth === undefined
          ? []
          : [{ clip: one.clip, stride, truth, leg: one.truth.leg_length }];
      });
    });
    type Of = (typeof strides)[number];
    const reads = (answer: (one: Of) => Answer, true_: (one: Of) => number | undefined) =>
      strides.map((one) => ({ clip: one.clip, answer: answer(one), truth: true_(one) }));
    expectTrue(
      reads(
        ({ stride }) => stride.length,
        ({ truth, leg }) => truth.length / leg,
      ),
      TRUTH.stride,
      12,
    );
    expectTrue(
      reads(
        ({ stride }) => stride.stance,
        ({ truth }) => truth.stance_share,
      ),
      0,
      12,
    );
    expectTrue(
      reads(
        ({ stride }) => stride.hipSway,
        ({ truth, leg }) => truth.hip_lateral_range / leg,
      ),
      TRUTH.sway,
      12,
    );
    expectTrue(
      reads(
        ({ stride }) => stride.hipRange,
        ({ truth, leg }) => truth.hip_vertical_range / leg,
      ),
      TRUTH.range,
      12,
    );
  });
});
