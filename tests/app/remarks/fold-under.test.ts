import { describe, expect, it } from "vitest";
import { foldUnder } from "../../../app/_remarks/fold-under";
import { reviewWalk, toldTogether } from "../../../lib/gait";
import { raise, walk } from "../../support/walk";

const low = raise(walk(), "left up", -0.08);

describe("remarks of one cause in the margin", () => {
  it("stand folded under the one that speaks, each in one place, with the ranks that they have", () => {
    const review = reviewWalk(low, "trade");
    const told = foldUnder(review.remarks, toldTogether(low, review));
    expect(told[0]?.remark.check).toBe("hip-order");
    expect(told[0]?.also.map(({ remark }) => remark.check)).toEqual(["hitch", "symmetry"]);
    const all = told.flatMap((one) => [one, ...one.also]);
    expect(all.map(({ rank }) => rank).toSorted((a, b) => a - b)).toEqual(
      review.remarks.map((_, rank) => rank),
    );
    for (const { remark, rank } of all) expect(review.remarks[rank]).toBe(remark);
  });

  it("stand by themselves before their cause was found, and when the one that spoke has gone", () => {
    const review = reviewWalk(low, "trade");
    const together = toldTogether(low, review);
    expect(foldUnder(review.remarks, []).every(({ also }) => also.length === 0)).toBe(true);
    const without = review.remarks.filter(({ check }) => check !== "hip-order");
    const told = foldUnder(without, together);
    expect(told.map(({ remark }) => remark)).toEqual(without);
  });

  it("stay folded by what was found before, while a new review of the same is not yet looked into", () => {
    const together = toldTogether(low, reviewWalk(low, "trade"));
    const lower = reviewWalk(raise(low, "left up", -0.001), "trade");
    expect(foldUnder(lower.remarks, together)[0]?.also).toHaveLength(2);
  });
});
