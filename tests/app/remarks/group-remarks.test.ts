import { describe, expect, it } from "vitest";
import { foldUnder } from "../../../app/_remarks/fold-under";
import { groupRemarks, splitTidy } from "../../../app/_remarks/group-remarks";
import { reviewWalk } from "../../../lib/gait";
import { push, raise, walk } from "../../support/walk";

/** Three remarks: two at the right passing (a slip; no rise after it is at the up), one at the left. */
const faulty = () => {
  const dipped = raise(walk(), "left down", 0.06);
  const sunk = raise(dipped, "right passing", -0.05);
  return reviewWalk(
    push(sunk, "right passing", ["right-heel", "right-ball", "right-toe"], 0.08),
    "trade",
  );
};

describe("grouping remarks", () => {
  it("keeps every remark, each in the group of its last panel", () => {
    const { remarks } = faulty();
    const groups = groupRemarks(splitTidy(foldUnder(remarks, [])).seen);
    const seen = remarks.filter(({ level }) => level !== "tidy");
    expect(groups.flatMap((group) => group.remarks).length).toBe(seen.length);
    for (const { panel, remarks: members } of groups) {
      for (const { remark } of members) expect(remark.panels.at(-1)).toBe(panel);
    }
  });

  it("has one group a panel, the gravest panel first", () => {
    const { remarks } = faulty();
    const groups = groupRemarks(splitTidy(foldUnder(remarks, [])).seen);
    const panels = groups.map((group) => group.panel);
    expect(new Set(panels).size).toBe(panels.length);
    expect(panels).toContain("right passing");
    expect(panels).toContain("left down");
    expect(groups[0]?.remarks[0]?.rank).toBe(0);
  });

  it("ranks within a group and knows each remark's place in the review", () => {
    const { remarks } = faulty();
    for (const group of groupRemarks(splitTidy(foldUnder(remarks, [])).seen)) {
      const ranks = group.remarks.map(({ rank }) => rank);
      expect(ranks).toEqual(ranks.toSorted((a, b) => a - b));
      for (const { remark, rank } of group.remarks) expect(remarks[rank]).toBe(remark);
    }
  });

  it("folds tidy remarks away without losing their places", () => {
    const [first, ...others] = faulty().remarks;
    if (first === undefined) throw new Error("the faulty walk draws remarks");
    const tidied = [first, ...others.map((remark) => ({ ...remark, level: "tidy" as const }))];
    const { seen, tidy } = splitTidy(foldUnder(tidied, []));
    expect(seen.map(({ rank }) => rank)).toEqual([0]);
    expect(tidy.map(({ rank }) => rank)).toEqual(others.map((_, index) => index + 1));
  });
});
