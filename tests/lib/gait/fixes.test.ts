import { describe, expect, it } from "vitest";
import type { Side } from "../../../lib/body";
import {
  applyFix,
  COMMON_YARDSTICKS,
  fixFor,
  type Remark,
  reviewWalk,
  type Walk,
  type Yardstick,
} from "../../../lib/gait";
import { SHAPE_FAULTS } from "../../support/faults-of-feet";
import { travelling } from "../../support/seeding";
import { raise, retime, walk, without, withPanel } from "../../support/walk";

interface Seed {
  readonly name: string;
  readonly check: Remark["check"];
  readonly yardsticks: readonly Yardstick[];
  readonly put: (into: Walk, side: Side) => Walk;
}

const labels: readonly Seed[] = [
  {
    name: "down and passing swapped",
    check: "pose-order",
    yardsticks: COMMON_YARDSTICKS,
    put: (into, side) =>
      withPanel(withPanel(into, `${side} down`, { pose: "passing" }), `${side} passing`, {
        pose: "down",
      }),
  },
  {
    name: "contact and passing swapped",
    check: "pose-order",
    yardsticks: COMMON_YARDSTICKS,
    put: (into, side) =>
      withPanel(withPanel(into, `${side} contact`, { pose: "passing" }), `${side} passing`, {
        pose: "contact",
      }),
  },
  {
    name: "a pose on the other foot",
    check: "pose-order",
    yardsticks: COMMON_YARDSTICKS,
    put: (into, side) =>
      withPanel(into, `${side} passing`, { weightOn: side === "left" ? "right" : "left" }),
  },
  {
    name: "a down before its contact",
    check: "pose-order",
    yardsticks: COMMON_YARDSTICKS,
    put: (into) =>
      withPanel(withPanel(into, "right contact", { pose: "down" }), "right down", {
        pose: "contact",
      }),
  },
  {
    name: "the same foot twice in a row",
    check: "pose-order",
    yardsticks: COMMON_YARDSTICKS,
    put: (into) =>
      (["contact", "down", "passing", "up"] as const).reduce<Walk>(
        (rest, pose) => withPanel(rest, `right ${pose}`, { weightOn: "left" }),
        into,
      ),
  },
];

const BASES = [
  { name: "exact marks", walk: walk({ precision: 0 }) },
  { name: "pencil marks", walk: walk() },
  { name: "a travelling walk", walk: travelling(walk({ precision: 0 })) },
];

const nameOf = ({ check, side, panels }: Remark) => `${check} ${side} ${panels.at(-1)}`;
const shown = (judged: Walk, yardstick: Yardstick) =>
  reviewWalk(judged, yardstick).remarks.filter(({ level }) => level === "shows");

describe.each(labels)("the fix for $name", (seed) => {
  const cases = BASES.flatMap((base) =>
    seed.yardsticks.flatMap((yardstick) =>
      (["left", "right"] as const).map((side) => ({ ...base, yardstick, side })),
    ),
  );

  it.each(cases)(
    "on the $side by $yardstick makes it go, and nothing new shows, on $name",
    (one) => {
      const faulty = seed.put(one.walk, one.side);
      const told = reviewWalk(faulty, one.yardstick).remarks.filter(
        ({ check }) => check === seed.check,
      );
      expect(told.length).toBeGreaterThan(0);
      for (const remark of told) {
        const fix = fixFor(faulty, remark) ?? none(remark);
        const fixed = applyFix(faulty, fix);
        expect(reviewWalk(fixed, one.yardstick).remarks.map(nameOf)).not.toContain(nameOf(remark));
        const before = shown(faulty, one.yardstick).map(nameOf);
        const fresh = shown(fixed, one.yardstick).filter(
          (found) => !before.includes(nameOf(found)),
        );
        expect(fresh.map(({ why }) => why)).toEqual([]);
      }
    },
  );
});

const BY_A_STEP = ["this-walk", "version"] as const;

describe.each(BY_A_STEP)("the fix for a pose that a step lacks, by %s", (yardstick) => {
  const whole = retime(walk({ precision: 0 }), "left passing", 21);
  const later = retime(whole, "right passing", 33);
  const cases = (["down", "passing", "up"] as const).map((pose) => ({ pose }));

  it.each(cases)("puts the $pose where the step it goes by has it", ({ pose }) => {
    const faulty = without(later, `right ${pose}`);
    const against = { version: later };
    const remarks = (of: Walk) => reviewWalk(of, yardstick, [], against).remarks;
    const remark = remarks(faulty).find(({ check }) => check === "missing-pose");
    const fix = remark === undefined ? null : fixFor(faulty, remark, against);
    if (remark === undefined || fix === null) throw new Error(`no fix for a missing ${pose}`);
    const [added] = fix.changes;
    const rule = later.panels.find(({ id }) => id === `left ${pose}`);
    expect(added).toMatchObject({ kind: "add-panel", pose, frame: (rule?.frame ?? 0) + 12 });
    const after = remarks(applyFix(faulty, fix));
    expect(after.map(nameOf)).not.toContain(nameOf(remark));
    expect(after.filter(({ level }) => level === "shows").map(({ why }) => why)).toEqual([]);
  });
});

describe.each(BY_A_STEP)("the fix for hips that are not as in the step they go by, by %s", (by) => {
  it.each([
    { pose: "down", legs: -0.06 },
    { pose: "passing", legs: -0.05 },
    { pose: "up", legs: -0.06 },
  ] as const)("brings the $pose back within what passes", ({ pose, legs }) => {
    const clean = walk({ precision: 0 });
    const faulty = raise(clean, `right ${pose}`, legs);
    const against = { version: clean };
    const told = reviewWalk(faulty, by, [], against).remarks;
    const remark = told.find(({ check }) => check === "hip-order");
    const fix = remark === undefined ? null : fixFor(faulty, remark, against);
    if (remark === undefined || fix === null) throw new Error(`no fix for the ${pose}`);
    const after = reviewWalk(applyFix(faulty, fix), by, [], against).remarks;
    expect(after.map(({ check }) => check)).not.toContain("hip-order");
    expect(after.filter(({ level }) => level === "shows").map(({ why }) => why)).toEqual([]);
  });
});

describe("a pose that was drawn as another", () => {
  it.each(SHAPE_FAULTS)("is left to the artist where a label would not help: $name", (fault) => {
    for (const yardstick of COMMON_YARDSTICKS) {
      const faulty = fault.put(walk({ precision: 0 }), "right", 2);
      const remark = reviewWalk(faulty, yardstick).remarks.find(
        ({ check }) => check === fault.check,
      );
      expect(remark).toBeDefined();
      // The step would lack the pose that its label has now.
      if (remark !== undefined) expect(fixFor(faulty, remark)).toBeNull();
    }
  });
});

function none({ title }: Remark): never {
  throw new Error(`no fix for: ${title}`);
}
