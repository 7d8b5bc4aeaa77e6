import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  bendOf,
  footJoints,
  JOINTS,
  type JointName,
  limbJoint,
  markOf,
  PANEL,
  pulledFigure,
  pulledPose,
  SIDES,
  type Side,
  type ViewMarks,
} from "../../../lib/body";
import { distance, type View } from "../../../lib/geometry";
import captured from "../../reference/captured-strides.json";
import { capturedWalk } from "../../support/captured";
import { walk } from "../../support/walk";

/** Poses by other hands than the board's: captured ones, and the tests' own built walk. */
const POSES = [...captured.walks.flatMap((one) => capturedWalk(one).panels), ...walk().panels].map(
  ({ marks }) => marks,
);

/** 0.5 % of a leg: what a limb's length may be off. Panel units. */
const HALF_PERCENT = 0.005 * PANEL.plainLeg;

const BONES = SIDES.flatMap((side) =>
  (
    [
      ["hip", "knee"],
      ["knee", "ankle"],
      ["ankle", "heel"],
      ["ankle", "ball"],
      ["ball", "toe"],
      ["heel", "ball"],
      ["shoulder", "elbow"],
      ["elbow", "wrist"],
    ] as const
  ).map(([from, to]) => [limbJoint(side, from), limbJoint(side, to)] as const),
);

const LIMBS = SIDES.flatMap((side) => [
  [limbJoint(side, "hip"), limbJoint(side, "knee"), limbJoint(side, "ankle")] as const,
  [limbJoint(side, "shoulder"), limbJoint(side, "elbow"), limbJoint(side, "wrist")] as const,
]);

const at = (marks: ViewMarks, joint: JointName) => {
  const mark = markOf(marks, joint);
  if (mark === null) throw new Error(`no ${joint}`);
  return mark;
};
const lengthIn = (marks: ViewMarks, [from, to]: readonly [JointName, JointName]) =>
  distance(at(marks, from), at(marks, to));

const pose = fc.constantFrom(...POSES);
const joint = fc.constantFrom(...JOINTS.filter((name) => name !== "load"));
const place = fc.record({
  x: fc.double({ min: -200, max: 900, noNaN: true }),
  y: fc.double({ min: -200, max: 1400, noNaN: true }),
});
const pinned = fc.constantFrom<readonly Side[]>([], ["left"], ["right"], ["left", "right"]);

describe("a figure pulled from the side", () => {
  it("keeps every bone's length wherever it is pulled", () => {
    fc.assert(
      fc.property(pose, joint, place, pinned, ({ side }, name, to, feet) => {
        const after = pulledFigure(side, { view: "side", joint: name, to, pinned: feet });
        for (const bone of BONES) {
          const off = Math.abs(lengthIn(after, bone) - lengthIn(side, bone));
          expect(off, bone.join(" to ")).toBeLessThanOrEqual(HALF_PERCENT);
        }
      }),
      { numRuns: 1000 },
    );
  });

  it("leaves a planted foot where it stands, to the last digit", () => {
    fc.assert(
      fc.property(pose, joint, place, pinned, ({ side }, name, to, feet) => {
        const after = pulledFigure(side, { view: "side", joint: name, to, pinned: feet });
        for (const one of feet.flatMap(footJoints)) expect(after[one]).toBe(side[one]);
      }),
      { numRuns: 500 },
    );
  });

  it("never bends a knee or an elbow the other way", () => {
    fc.assert(
      fc.property(pose, joint, place, pinned, ({ side }, name, to, feet) => {
        const after = pulledFigure(side, { view: "side", joint: name, to, pinned: feet });
        for (const [root, middle, end] of LIMBS) {
          const was = bendOf(at(side, root), at(side, middle), at(side, end));
          const is = bendOf(at(after, root), at(after, middle), at(after, end));
          if (was !== null) expect([was, null], middle).toContain(is);
        }
      }),
      { numRuns: 1000 },
    );
  });
});

describe("both views of a figure", () => {
  it("agree in height after a pull in either, within 1.5 % of a leg", () => {
    // Pulls of up to a seventh of a leg. A bone that would be seen too long from ahead keeps a height of its own.
    const by = fc.double({ min: -60, max: 60, noNaN: true });
    fc.assert(
      fc.property(
        ...[pose, joint, by, by, pinned],
        fc.constantFrom<View>("side", "front"),
        (marks, name, x, y, feet, view) => {
          const from = at(marks[view], name);
          const to = { x: from.x + x, y: from.y + y };
          const after = pulledPose(marks, { view, joint: name, to, pinned: feet });
          for (const one of JOINTS.filter((every) => every !== "load")) {
            const apart = Math.abs(at(after.side, one).y - at(after.front, one).y);
            expect(apart, one).toBeLessThanOrEqual(3 * HALF_PERCENT + 1e-9); // the limit itself, rounded
          }
        },
      ),
      { numRuns: 1000 },
    );
  });
});
