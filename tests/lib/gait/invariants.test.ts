import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { JOINTS, type JointName, type Mark, type Side, type ViewMarks } from "../../../lib/body";
import { type Remark, reviewWalk, type Walk, type WalkPanel, YARDSTICKS } from "../../../lib/gait";
import { type PanelName, push, raise, retime, unmark, walk } from "../../support/walk";

const POSES = ["contact", "down", "passing", "up"] as const;
const SIDES = ["left", "right"] as const;
const NAMES = SIDES.flatMap((side) => POSES.map((pose): PanelName => `${side} ${pose}`));

/** A walk with something done to every pose: hips up or down, a foot pushed, a stem moved. */
const roughWalk = fc
  .array(
    fc.record({
      hips: fc.integer({ min: -60, max: 60 }), // thousandths of a leg
      foot: fc.integer({ min: -90, max: 90 }),
      frames: fc.integer({ min: -1, max: 1 }),
    }),
    { minLength: NAMES.length, maxLength: NAMES.length },
  )
  .map((changes) =>
    changes.reduce((changed, { hips, foot, frames }, index) => {
      const name = NAMES[index] ?? "end";
      const side: Side = name.startsWith("left") ? "left" : "right";
      const frame = changed.panels.find(({ id }) => id === name)?.frame ?? 1;
      const pushed = push(changed, name, [`${side}-heel`, `${side}-ball`], foot / 1000);
      const moved = name.endsWith("contact") ? pushed : retime(pushed, name, frame + frames);
      return raise(moved, name, hips / 1000);
    }, walk()),
  );
const yardsticks = fc.constantFrom(...YARDSTICKS);

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
  change: (mark: Mark, joint: JointName, panel: WalkPanel) => Mark,
) {
  const panels = judged.panels.map((panel) => {
    const side = Object.fromEntries(
      Object.entries(panel.marks.side).map(([joint, mark]) => [
        joint,
        change(mark, joint as JointName, panel),
      ]),
    ) as ViewMarks;
    return { ...panel, marks: { ...panel.marks, side } };
  });
  return { ...judged, panels };
}

function mirrored(judged: Walk): Walk {
  const panels = judged.panels.map((panel) => ({
    ...panel,
    id: mirrorWord(panel.id),
    weightOn: panel.weightOn === null ? null : (mirrorWord(panel.weightOn) as Side),
    marks: {
      ...panel.marks,
      side: Object.fromEntries(
        Object.entries(panel.marks.side).map(([joint, mark]) => [mirrorWord(joint), mark]),
      ),
    },
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
    expect([...seen].sort()).toEqual(["gaps", "hip-order", "slide"]);
  });

  it("draws mirrored remarks when left and right change places", () => {
    fc.assert(
      fc.property(roughWalk, yardsticks, (rough, yardstick) => {
        const expected = remarks(rough, yardstick).map(mirrorWord).toSorted();
        expect(remarks(mirrored(rough), yardstick)).toEqual(expected);
      }),
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
    );
  });

  it("draws the same remarks on the spot and travelling", () => {
    const places = fc.array(fc.integer({ min: -300, max: 300 }), { minLength: 10, maxLength: 10 });
    fc.assert(
      fc.property(roughWalk, yardsticks, places, (rough, yardstick, shifts) => {
        const by = new Map(rough.panels.map(({ id }, index) => [id, (shifts[index] ?? 0) / 1000]));
        const moved = changeMarks(rough, (mark, _joint, { id }) => ({
          ...mark,
          x: mark.x - (by.get(id) ?? 0) * 420,
        }));
        const panels = moved.panels.map((panel) => ({
          ...panel,
          place: (panel.place ?? rough.advance * (panel.frame - 1)) + (by.get(panel.id) ?? 0),
        }));
        const travelling: Walk = { ...moved, panels, travel: "travelling", advance: 0 };
        expect(remarks(travelling, yardstick)).toEqual(remarks(rough, yardstick));
      }),
    );
  });

  it("is never sound by a check whose marks are missing or no numbers", () => {
    const needed = fc.constantFrom(
      {
        check: "hip-order",
        joints: ["left-hip", "right-hip"],
        poses: ["contact", "down", "passing"],
      },
      { check: "slide", joints: ["heel"], poses: ["contact", "passing"] },
      { check: "slide", joints: ["ball", "toe"], poses: ["down", "passing"] },
    );
    fc.assert(
      fc.property(
        roughWalk,
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
          const open = broken ? spoil(rough, name, gone) : unmark(rough, name, gone);
          const answers = reviewWalk(open, yardstick).findings.filter(
            (finding) => finding.check === check && finding.side === side,
          );
          expect(answers.filter(({ kind }) => kind === "cannot-tell")).toHaveLength(1);
          expect(answers.filter(({ kind }) => kind === "sound").length).toBeLessThan(
            check === "slide" ? 2 : 1,
          );
        },
      ),
    );
  });
});

function spoil(judged: Walk, name: PanelName, joints: readonly JointName[]): Walk {
  return changeMarks(judged, (mark, joint, { id }) =>
    id === name && joints.includes(joint) ? { ...mark, x: Number.NaN } : mark,
  );
}
