import { describe, expect, it } from "vitest";
import { bundleRemarks, foldBundles } from "../../../app/_remarks/bundle-remarks";
import { foldUnder } from "../../../app/_remarks/fold-under";
import type { CheckId, Level, Remark } from "../../../lib/gait";

/** A remark that is seen at one panel. */
const remark = (title: string, level: Level = "shows", check: CheckId = "slide"): Remark => ({
  ...{ kind: "remark", check, level, yardstick: "trade", side: "left" },
  ...{ panels: ["a"], frames: [1], spots: [], title, why: "", source: "", beyond: 1 },
  measured: { value: 0.1, plusMinus: 0, unit: "leg" },
  expected: { value: 0.05, plusMinus: 0, unit: "leg" },
});
const ranked = (...remarks: Remark[]) => foldUnder(remarks, []);
const read = (...remarks: Remark[]) =>
  bundleRemarks(ranked(...remarks)).map(({ title, remarks: places }) => [
    title,
    ...places.map(({ rank }) => rank),
  ]);

describe("many remarks", () => {
  it("are said once for both sides, gravest first, with every place", () => {
    expect(
      read(
        remark("Left foot slips"),
        remark("Right knee bends back", "shows", "knee"),
        remark("Right foot slips"),
        remark("Left foot slips", "may-show"),
      ),
    ).toEqual([
      ["Foot slips, left and right", 0, 2, 3],
      ["Right knee bends back", 1],
    ]);
  });

  it("keep their side in the heading where it is always the same", () => {
    expect(read(remark("Left foot slips"), remark("Left foot slips"))).toEqual([
      ["Left foot slips", 0, 1],
    ]);
    expect(
      read(remark("Weight is behind the left foot"), remark("Weight is behind the right foot")),
    ).toEqual([["Weight is behind the foot, left and right", 0, 1]]);
  });

  it("are not taken together because they sound alike", () => {
    expect(
      read(remark("Left foot slips"), remark("Left foot slips", "shows", "float")),
    ).toHaveLength(2);
    expect(read(remark("Left foot slips"), remark("Left foot slides back"))).toHaveLength(2);
  });

  it("lose none of thirty, and are read five at a time", () => {
    const titles = Array.from({ length: 15 }, (_, index) => `step is odd in way ${index}`);
    const all = ranked(
      ...titles.flatMap((title) => [remark(`Left ${title}`), remark(`Right ${title}`)]),
    );
    const { shown, folded } = foldBundles(bundleRemarks(all));
    expect(shown).toHaveLength(5);
    const kept = [...shown, ...folded].flatMap(({ remarks }) => remarks);
    expect(kept.toSorted((a, b) => a.rank - b.rank)).toEqual(all);
  });

  it("are not folded for the sake of one", () => {
    const six = Array.from({ length: 6 }, (_, index) => remark(`Step is odd in way ${index}`));
    expect(foldBundles(bundleRemarks(ranked(...six))).folded).toEqual([]);
  });
});
