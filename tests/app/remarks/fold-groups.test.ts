import { describe, expect, it } from "vitest";
import { countIn, foldGroups } from "../../../app/_remarks/fold-groups";
import type { RemarkGroup } from "../../../app/_remarks/group-remarks";
import { reviewWalk } from "../../../lib/gait";
import { raise, walk } from "../../support/walk";

const [REMARK] = reviewWalk(raise(walk(), "left down", 0.06), "trade").remarks;

/** Groups of so many remarks each. */
const groups = (...sizes: number[]): RemarkGroup[] =>
  sizes.map((size, index) => ({
    panel: `panel ${index}`,
    remarks: Array.from({ length: size }, (_, rank) => {
      if (REMARK === undefined) throw new Error("a high down draws a remark");
      return { remark: REMARK, rank };
    }),
  }));
const sizes = (of: readonly RemarkGroup[]) => of.map(({ remarks }) => remarks.length);

describe("folding remarks", () => {
  it("reads a handful at once and lets the rest wait", () => {
    const { shown, folded } = foldGroups(groups(2, 2, 1, 3, 1, 9));
    expect(sizes(shown)).toEqual([2, 2, 1]);
    expect(sizes(folded)).toEqual([3, 1, 9]);
  });

  it("folds nothing while all can be read", () => {
    expect(sizes(foldGroups(groups(3, 2, 1)).shown)).toEqual([3, 2, 1]);
    expect(foldGroups([]).folded).toEqual([]);
  });

  it("always reads the gravest panel, whole", () => {
    const { shown, folded } = foldGroups(groups(8, 2));
    expect(sizes(shown)).toEqual([8]);
    expect(sizes(folded)).toEqual([2]);
  });

  it("does not fold one remark alone", () => {
    expect(sizes(foldGroups(groups(4, 2, 1)).shown)).toEqual([4, 2, 1]);
  });

  it("loses none of twenty", () => {
    const all = groups(...Array.from({ length: 20 }, () => 1));
    const { shown, folded } = foldGroups(all);
    expect(countIn(shown)).toBeLessThanOrEqual(6);
    expect([...shown, ...folded]).toEqual(all);
  });
});
