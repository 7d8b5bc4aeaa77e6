import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { JOINTS, type JointName, SIDES, type Side, type ViewMarks } from "../../../lib/body";
import {
  COMMON_YARDSTICKS,
  type Remark,
  reviewWalk,
  type Walk,
  type WalkPanel,
  YARDSTICKS,
  type Yardstick,
} from "../../../lib/gait";
import type { View } from "../../../lib/geometry";
import { changeMarks } from "../../support/changed-marks";
import { asLabelled, NAMES } from "../../support/rough-walk";
import { panelOf } from "../../support/seeded/posed";
import { told } from "../../support/told-remarks";
import { type PanelName, unmark, walk, withPanel } from "../../support/walk";

const yardsticks = fc.constantFrom(...COMMON_YARDSTICKS);
/** What these ask is told by labels and frames; no mark is read for it. */
const TOLD_BY_LABELS: readonly string[] = ["missing-pose", "gaps", "lead-in"]; // none is drawn here, or all in order

describe("an unfinished drawing", () => {
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
        // How fast an arc goes is held against the whole of that arc.
        const ofSpoiltArc = ({ check, spots }: Remark) =>
          check === "hitch" &&
          spots.some(({ joints }) => lost.some(({ joint }) => joints.includes(joint)));
        const had = new Set(whole.map(({ check, side }) => `${check} ${side}`));
        const unexplained = reviewWalk(open, yardstick).remarks.filter(
          (remark) =>
            !had.has(`${remark.check} ${remark.side}`) &&
            !remark.panels.some((id) => spoilt.has(id)) &&
            !ofSpoiltArc(remark),
        );
        expect(unexplained.map(told)).toEqual([]);
      }),
      { numRuns: 80, seed: 63 },
    );
  });

  it("is never sound where a mark could lie anywhere, whatever is read from it", () => {
    const vague = (panel: WalkPanel, view: View): ViewMarks =>
      Object.fromEntries(
        Object.entries(panel.marks[view]).map(([joint, mark]) => [
          joint,
          { ...mark, precision: 0.08 * 420 },
        ]),
      );
    const clean = walk({ precision: 0 });
    const panels = clean.panels.map((panel) => ({
      ...panel,
      marks: { side: vague(panel, "side"), front: vague(panel, "front") },
    }));
    for (const yardstick of YARDSTICKS) {
      const { findings } = reviewWalk({ ...clean, panels }, yardstick);
      const called = findings.filter(({ kind }) => kind === "sound").map(({ check }) => check);
      expect([...new Set(called)].filter((check) => !TOLD_BY_LABELS.includes(check))).toEqual([]);
      for (const finding of findings) {
        if (finding.kind === "cannot-tell") expect(finding.needs.length).toBeGreaterThan(5);
      }
    }
  });

  it("says which mark is too vague where it is one, and answers by the others", () => {
    const clean = walk({ precision: 0 });
    const knee = { x: 0, y: 0, ...panelOf(clean, "left passing").marks.side["left-knee"] };
    const rough = withPanel(clean, "left passing", {
      marks: {
        side: {
          ...panelOf(clean, "left passing").marks.side,
          "left-knee": { ...knee, precision: 42 },
        },
        front: panelOf(clean, "left passing").marks.front,
      },
    });
    const { cannotTell, remarks } = reviewWalk(rough, "trade");
    expect(remarks).toEqual([]);
    expect(cannotTell.map(({ needs }) => needs)).toContain(
      "the left knee marked more exactly at frame 19",
    );
    const others = cannotTell.filter(({ panels }) => !panels.includes("left passing"));
    expect(others).toEqual([]);
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
