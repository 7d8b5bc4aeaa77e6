import { describe, expect, it } from "vitest";
import {
  applyFix,
  fixFor,
  type OnPurpose,
  purposeOf,
  type Remark,
  reviewWalk,
  toldAs,
  toldTogether,
  type Walk,
  type Yardstick,
} from "../../../lib/gait";
import { FAULTS } from "../../support/seeded/faults";
import { raise, walk } from "../../support/walk";

/** Who speaks and what stands under it, by checks. */
function together(from: Walk, yardstick: Yardstick = "trade"): readonly string[] {
  return toldTogether(from, reviewWalk(from, yardstick)).map(({ lead, also }) =>
    [lead, ...also].map(({ check }) => check).join(" < "),
  );
}

const seeded = (name: string, times = 2) => {
  const fault = FAULTS.find((one) => one.name === name);
  if (fault === undefined) throw new Error(`no fault ${name}`);
  return fault.put(walk(), "left", times);
};

const lowUp = () => raise(walk(), "left up", -0.08);

describe("remarks of one cause", () => {
  it("are told as one: a low up that has no rise, sinks twice and is uneven", () => {
    const [first] = together(lowUp());
    expect(first).toBe("hip-order < hitch < symmetry");
  });

  it.each([
    ["passing that stands too far ahead", "slide < symmetry"],
    ["foot that floats at its up", "float < tempo < symmetry"],
    ["legs under each other's names", "sides < float < symmetry < width < symmetry"],
    ["long shank", "limb-length < symmetry"],
    ["toe that drags", "clearance < sink"],
  ])("are told as one: %s", (name, told) => {
    expect(together(seeded(name))).toContain(told);
  });

  it("are not folded where nothing known settles them", () => {
    const open = together(seeded("arm that swings with its leg"));
    expect(open).toEqual(["opposition"]);
  });

  it("are two where each needs its own fix", () => {
    const two = raise(raise(walk(), "left up", -0.08), "right passing", -0.05);
    expect(together(two).filter((told) => told.startsWith("hip-order"))).toHaveLength(2);
  });

  it("are none in a walk that draws none", () => {
    expect(together(walk())).toEqual([]);
  });
});

function keptAt(from: Walk, remark: Remark): OnPurpose {
  const purpose = purposeOf(reviewWalk(from, "trade").remarks, remark, "panel");
  if (purpose === null) throw new Error("it is seen at a panel");
  return { ...purpose, id: "kept1234", reason: "", by: "Wren" };
}

describe("a lead that is kept on purpose", () => {
  it("speaks no longer for the others, which are told by what settles them else", () => {
    const low = lowUp();
    const [lead] = reviewWalk(low, "trade").remarks;
    if (lead === undefined) throw new Error("no remark");
    const review = reviewWalk(low, "trade", [keptAt(low, lead)]);
    const groups = toldTogether(low, review);
    expect(groups.flatMap((one) => [one.lead, ...one.also])).toHaveLength(review.remarks.length);
    expect(groups.map((one) => one.lead.check)).toEqual(["symmetry"]);
  });
});

const SEEDED = FAULTS.filter(({ fits }) => fits?.(walk(), "left") ?? true);

describe.each(SEEDED.map((fault) => [fault.name, fault] as const))("after %s", (_, fault) => {
  const yardstick = fault.yardsticks?.[0] ?? "trade";

  it("every remark is told once, and what is folded goes with the fix over it", () => {
    const faulty = fault.put(walk(), "left", 2);
    const review = reviewWalk(faulty, yardstick);
    const groups = toldTogether(faulty, review);
    const all = groups.flatMap(({ lead, also }) => [lead, ...also]);
    expect(new Set(all)).toEqual(new Set(review.remarks));
    expect(all).toHaveLength(review.remarks.length);
    for (const { lead, also } of groups.filter((one) => one.also.length > 0)) {
      const fix = fixFor(faulty, lead);
      if (fix === null) throw new Error("a lead has a fix");
      const left = reviewWalk(applyFix(faulty, fix), yardstick).remarks.map(toldAs);
      for (const one of [lead, ...also]) expect(left).not.toContain(toldAs(one));
      if (lead.level !== "shows") expect(also.every(({ level }) => level !== "shows")).toBe(true);
    }
  });
});
