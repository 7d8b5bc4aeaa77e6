import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { JOINTS, type JointName, type Mark, type Side, type ViewMarks } from "../../../lib/body";
import {
  type Answer,
  COMMON_YARDSTICKS,
  type CommonYardstick,
  type Remark,
  reviewWalk,
  type Walk,
  type WalkPanel,
  withTravel,
  type Yardstick,
} from "../../../lib/gait";
import type { View } from "../../../lib/geometry";
import reference from "../../reference/captured-strides.json";
import { capturedWalk } from "../../support/captured";
import {
  lift,
  type PanelName,
  push,
  raise,
  retime,
  shift,
  unmark,
  walk,
  withPanel,
} from "../../support/walk";

const POSES = ["contact", "down", "passing", "up"] as const;
const SIDES = ["left", "right"] as const;
const NAMES = SIDES.flatMap((side) => POSES.map((pose): PanelName => `${side} ${pose}`));

/** Things done to a pose, each in thousandths of a leg, frames or which label. */
const roughness = fc.record({
  hips: fc.integer({ min: -60, max: 60 }),
  foot: fc.integer({ min: -90, max: 90 }),
  body: fc.integer({ min: -150, max: 150 }),
  sway: fc.integer({ min: -60, max: 60 }),
  lifted: fc.integer({ min: -50, max: 50 }),
  toe: fc.integer({ min: -80, max: 80 }),
  shoulder: fc.integer({ min: -40, max: 40 }),
  frames: fc.integer({ min: -1, max: 1 }),
  label: fc.integer({ min: 0, max: 11 }),
});

const HIPS: readonly JointName[] = ["left-hip", "right-hip"];
const FOOT_PARTS = ["ankle", "heel", "ball", "toe"] as const;

/** A walk with something done to every pose: its weight, its foot, its stem, and now and then its label. */
const roughWalk = fc
  .array(roughness, { minLength: NAMES.length, maxLength: NAMES.length })
  .map((changes) =>
    changes.reduce((changed, done, index) => {
      const name = NAMES[index] ?? "end";
      const side: Side = name.startsWith("left") ? "left" : "right";
      const frame = changed.panels.find(({ id }) => id === name)?.frame ?? 1;
      const pushed = push(changed, name, [`${side}-heel`, `${side}-ball`], done.foot / 1000);
      const moved = name.endsWith("contact") ? pushed : retime(pushed, name, frame + done.frames);
      const raised = raise(moved, name, done.hips / 1000);
      const carried = shift(
        push(raised, name, HIPS, done.body / 1000),
        name,
        HIPS,
        done.sway / 1000,
      );
      const foot = FOOT_PARTS.map((part): JointName => `${side}-${part}`);
      const stood = lift(carried, name, foot, done.lifted / 1000);
      const leant = lift(stood, name, ["left-shoulder"], done.shoulder / 1000);
      const rolled = lift(leant, name, [`${side}-toe`, `${side}-ball`], done.toe / 1000);
      const pose = POSES[done.label]; // mostly none: then the label stays
      if (pose === undefined || name.endsWith("contact")) return rolled;
      return withPanel(rolled, name, { pose });
    }, walk()),
  );
/** The same with every pose under its own label, so that each question is asked where it belongs. */
const asLabelled = roughWalk.map((rough) => ({
  ...rough,
  panels: rough.panels.map((panel) => {
    const pose = POSES.find((known) => panel.id.endsWith(known));
    return pose === undefined ? panel : { ...panel, pose };
  }),
}));
const yardsticks = fc.constantFrom(...COMMON_YARDSTICKS);

/** A remark as far as it does not depend on the last digit of a sum. */
const told = ({ check, level, side, panels, title, measured }: Remark) =>
  [check, level, side, panels.join(), title, measured.value.toFixed(6)].join(" · ");
const remarks = (judged: Walk, yardstick: "trade" | "life") =>
  reviewWalk(judged, yardstick).remarks.map(told).toSorted();

const mirrorWord = (text: string) =>
  text.replace(/left|right|Left|Right/g, (word) => MIRRORED[word] ?? word);
const MIRRORED: Readonly<Record<string, string>> = {
  left: "right",
  right: "left",
  Left: "Right",
  Right: "Left",
};

function changeMarks(
  judged: Walk,
  change: (mark: Mark, joint: JointName, panel: WalkPanel, view: View) => Mark,
) {
  const panels = judged.panels.map((panel) => {
    const changed = (view: View) =>
      Object.fromEntries(
        Object.entries(panel.marks[view]).map(([joint, mark]) => [
          joint,
          change(mark, joint as JointName, panel, view),
        ]),
      ) as ViewMarks;
    return { ...panel, marks: { side: changed("side"), front: changed("front") } };
  });
  return { ...judged, panels };
}

/** The same marks under the other side's names. */
function named(marks: ViewMarks): ViewMarks {
  return Object.fromEntries(
    Object.entries(marks).map(([joint, mark]) => [mirrorWord(joint), mark]),
  );
}

/** From ahead the walker's left and right lie left and right on the paper. */
function flipped(marks: ViewMarks): ViewMarks {
  return Object.fromEntries(
    Object.entries(marks).map(([joint, mark]) => [joint, { ...mark, x: 720 - mark.x }]),
  );
}

function mirrored(judged: Walk): Walk {
  const panels = judged.panels.map((panel) => ({
    ...panel,
    id: mirrorWord(panel.id),
    weightOn: panel.weightOn === null ? null : (mirrorWord(panel.weightOn) as Side),
    marks: { side: named(panel.marks.side), front: flipped(named(panel.marks.front)) },
  }));
  return { ...judged, panels };
}

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
        const expected = remarks(rough, yardstick).map(mirrorWord).toSorted();
        expect(remarks(mirrored(rough), yardstick)).toEqual(expected);
      }),
      { numRuns: 50 },
    );
  });

  it("draws the same remarks drawn larger, smaller or further along", () => {
    const size = fc.integer({ min: 30, max: 180 }).map((percent) => percent / 100);
    const shift = fc.integer({ min: -200, max: 200 });
    fc.assert(
      fc.property(roughWalk, yardsticks, size, shift, (rough, yardstick, scale, along) => {
        const redrawn = changeMarks(rough, ({ x, y, precision }) => ({
          x: 360 + (x - 360) * scale + along,
          y: 1080 + (y - 1080) * scale,
          precision: precision * scale,
        }));
        expect(remarks(redrawn, yardstick)).toEqual(remarks(rough, yardstick));
      }),
      { numRuns: 50 },
    );
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
        expect(remarks(travelling, yardstick)).toEqual(remarks(rough, yardstick));
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
        expect(remarks(turnedOver(left), yardstick)).toEqual(remarks(rough, yardstick));
      }),
      { numRuns: 30, seed: 62 },
    );
  });

  it("draws a remark that the whole drawing has not only where marks are gone, or for others (seed 63)", () => {
    const gone = fc.uniqueArray(
      fc.record({ panel: fc.constantFrom(...NAMES), joint: fc.constantFrom(...JOINTS) }),
      { minLength: 1, maxLength: 25, selector: ({ panel, joint }) => `${panel} ${joint}` },
    );
    fc.assert(
      fc.property(asLabelled, yardsticks, gone, (rough, yardstick, lost) => {
        const whole = reviewWalk(rough, yardstick).remarks;
        const open = lost.reduce<Walk>((so, { panel, joint }) => unmark(so, panel, [joint]), rough);
        const spoilt = new Set<string>(lost.map(({ panel }) => panel));
        const had = new Set(whole.map(({ check, side }) => `${check} ${side}`));
        const unexplained = reviewWalk(open, yardstick).remarks.filter(
          ({ check, side, panels }) =>
            !had.has(`${check} ${side}`) && !panels.some((id) => spoilt.has(id)),
        );
        expect(unexplained.map(told)).toEqual([]);
      }),
      { numRuns: 80, seed: 63 },
    );
  });

  it("is never sound by a check whose marks are missing or no numbers", () => {
    const needed = fc.constantFrom(
      {
        check: "hip-order",
        joints: ["left-hip", "right-hip"],
        poses: ["contact", "down", "passing"],
      },
      { check: "weight-side", joints: ["left-hip", "right-hip"], poses: ["contact", "passing"] },
      { check: "weight-front", joints: ["left-hip"], poses: ["contact", "passing"] },
      { check: "slide", joints: ["heel"], poses: ["contact", "passing"] },
      { check: "slide", joints: ["ball", "toe"], poses: ["down", "passing"] },
      { check: "float", joints: ["heel"], poses: ["contact", "down", "passing", "up"] },
      { check: "sink", joints: ["heel"], poses: ["contact", "down", "passing", "up"] },
      { check: "foot-roll", joints: ["heel"], poses: ["contact", "passing", "up"] },
      { check: "pose-order", joints: ["ankle", "heel"], poses: ["contact", "down", "passing"] },
    );
    fc.assert(
      fc.property(
        asLabelled,
        yardsticks,
        needed,
        fc.constantFrom(...SIDES),
        fc.nat(),
        fc.boolean(),
        (rough, yardstick, { check, joints, poses }, side, pick, broken) => {
          const pose = poses[pick % poses.length] ?? "passing";
          const name = `${side} ${pose}` as PanelName;
          const gone = JOINTS.filter((joint) =>
            joints.some((part) => joint === part || joint === `${side}-${part}`),
          );
          const whole = answers(rough, yardstick, check, side);
          const open = broken ? spoil(rough, name, gone) : unmark(rough, name, gone);
          const left = answers(open, yardstick, check, side);
          // What is under the ground is, whatever else of the foot is marked.
          const told = left.some(
            ({ kind, panels }) => check === "sink" && kind === "remark" && panels.includes(name),
          );
          const untold = (found: typeof left) =>
            found.filter(({ kind }) => kind === "cannot-tell").length;
          expect(told || untold(left) > untold(whole)).toBe(true);
        },
      ),
    );
  });
});

function sameWhenSwitched(travelling: Walk, yardstick: CommonYardstick): void {
  const onTheSpot = withTravel(travelling, "on-the-spot");
  const back = withTravel(onTheSpot, "travelling");
  expect(onTheSpot.panels.every(({ place }) => place === null)).toBe(true);
  const before = reviewWalk(travelling, yardstick).remarks.toSorted(byName);
  for (const one of [onTheSpot, back]) {
    const after = reviewWalk(one, yardstick).remarks.toSorted(byName);
    expect(after.map(nameOf)).toEqual(before.map(nameOf));
    for (const [index, { measured, level }] of after.entries()) {
      expect(measured.value).toBeCloseTo(before[index]?.measured.value ?? Number.NaN, 9);
      expect(level).toBe(before[index]?.level);
    }
  }
}

const nameOf = ({ check, side, panels, title }: Remark) =>
  [check, side, panels.join(), title].join(" · ");
const byName = (a: Remark, b: Remark) => (nameOf(a) < nameOf(b) ? -1 : 1);

const toldBy = (answer: Answer | undefined) => (answer?.kind === "value" ? answer.value : 0);

/** The same page seen from behind: what went to its right goes to its left, and the ground with it. */
function turnedOver(judged: Walk): Walk {
  const turned = changeMarks(judged, (mark, _joint, _panel, view) =>
    view === "front" ? mark : { ...mark, x: 720 - mark.x },
  );
  const panels = turned.panels.map((panel) => ({
    ...panel,
    place: panel.place === null ? null : -panel.place,
  }));
  return { ...turned, panels, advance: -judged.advance };
}

/** What a check answers about one side. */
function answers(judged: Walk, yardstick: Yardstick, check: string, side: Side) {
  return reviewWalk(judged, yardstick).findings.filter(
    (finding) => finding.check === check && finding.side === side,
  );
}

function spoil(judged: Walk, name: PanelName, joints: readonly JointName[]): Walk {
  return changeMarks(judged, (mark, joint, { id }) =>
    id === name && joints.includes(joint) ? { ...mark, x: Number.NaN } : mark,
  );
}
