import { describe, expect, it } from "vitest";
import { keyRemarks, remarksOn } from "../../../lib/export";
import type { Level, Remark } from "../../../lib/gait";

const remark = (title: string, level: Level, ...panels: string[]): Remark => ({
  kind: "remark",
  check: "slide",
  level,
  yardstick: "trade",
  side: "left",
  panels,
  frames: [],
  spots: [],
  measured: { value: 0.1, plusMinus: 0, unit: "leg" },
  expected: { value: 0.05, plusMinus: 0, unit: "leg" },
  title,
  why: "",
  source: "",
  beyond: 1,
});

const panels = ["a", "b", "c"].map((id) => ({ id }));

describe("the numbers that remarks are printed under", () => {
  const keyed = keyRemarks(
    {
      remarks: [
        remark("late and grave", "shows", "a", "c"),
        remark("early and grave", "shows", "a", "b"),
        remark("early and slight", "may-show", "a", "b"),
        remark("folded away", "tidy", "b"),
      ],
    },
    panels,
  );

  it("run as the page is read, from 1, graver first on one panel, tidy ones left out", () => {
    expect(keyed.map(({ key, remark: { title } }) => [key, title])).toEqual([
      [1, "early and grave"],
      [2, "early and slight"],
      [3, "late and grave"],
    ]);
  });

  it("hang where the viewer sees it: on the last panel of each", () => {
    expect(remarksOn(keyed, "b").map(({ key }) => key)).toEqual([1, 2]);
    expect(remarksOn(keyed, "a")).toEqual([]);
  });
});
