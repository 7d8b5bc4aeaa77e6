import { describe, expect, it } from "vitest";
import { foldPeople } from "../../../app/_people/fold-people";

describe("folding people in the head band", () => {
  it("names up to four", () => {
    expect(foldPeople(["Ada", "Ben", "Cy", "Dee"])).toEqual({
      shown: ["Ada", "Ben", "Cy", "Dee"],
      folded: [],
    });
  });

  it("folds from the fifth on, and never one alone", () => {
    const { shown, folded } = foldPeople(["Ada", "Ben", "Cy", "Dee", "Eve"]);
    expect(shown).toEqual(["Ada", "Ben", "Cy"]);
    expect(folded).toEqual(["Dee", "Eve"]);
  });

  it("has nothing to fold when nobody is there", () => {
    expect(foldPeople([])).toEqual({ shown: [], folded: [] });
  });
});
