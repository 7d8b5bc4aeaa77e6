import { describe, expect, it } from "vitest";
import { keepTogether } from "../../../app/_remarks/keep-together";
import { tellMeasure } from "../../../app/_remarks/tell-reading";

/** The places where a line may end, as a reader sees them. */
const pieces = (text: string) => keepTogether(text).split(" ");

describe("a sentence with numbers", () => {
  it("ends no line between a number, its ± and its unit", () => {
    expect(pieces("stand 6.4 ± 1.0 % of a leg above")).toEqual([
      "stand",
      "6.4\u00a0±\u00a01.0\u00a0%",
      "of",
      "a",
      "leg",
      "above",
    ]);
    expect(pieces("takes 5 frames; 13 → 15")).toEqual([
      "takes",
      "5\u00a0frames;",
      "13\u00a0→\u00a015",
    ]);
  });

  it("loses not a letter", () => {
    const said = "At the right down the hips stand 6.4 ± 1.0 % of a leg above, 3 of 4.";
    expect(keepTogether(said).replaceAll("\u00a0", " ")).toBe(said);
  });
});

describe("a remark's number", () => {
  it("is told as its sentence tells it, with its sign", () => {
    expect(tellMeasure({ value: -0.005, plusMinus: 0, unit: "leg" })).toBe("−0.5 % of a leg");
    expect(tellMeasure({ value: 0.0641, plusMinus: 0.0097, unit: "leg" })).toBe(
      "6.4 ± 1.0 % of a leg",
    );
    expect(tellMeasure({ value: 5, plusMinus: 0, unit: "frames" })).toBe("5 frames");
  });
});
