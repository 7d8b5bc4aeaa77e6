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
import { walk, withPanel } from "../../support/walk";

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
