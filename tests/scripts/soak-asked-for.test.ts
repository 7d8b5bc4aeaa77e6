import { describe, expect, it } from "vitest";
import { askedFor } from "../soak/asked-for";
import { PARTS } from "../soak/parts";

const KNOWN = ["power-loss", "detection"];

describe("what a soak is asked for", () => {
  it("is every part, two hundred throws each, unless something is said", () => {
    expect(askedFor([], KNOWN)).toEqual({ parts: KNOWN, throws: 200 });
    expect(askedFor(["5"], KNOWN)).toEqual({ parts: KNOWN, throws: 5 });
  });

  it("is the parts that are named, in their own order, with the number before or after", () => {
    expect(askedFor(["detection", "20"], KNOWN)).toEqual({ parts: ["detection"], throws: 20 });
    expect(askedFor(["20", "detection", "power-loss"], KNOWN)).toEqual({
      parts: KNOWN,
      throws: 20,
    });
  });

  it.each([["0"], ["2.5"], ["detektion"], ["detection", "5", "6"]])(
    "is refused in one line that names the parts or the number: %s %s %s",
    (...words) => {
      expect(() => askedFor(words, KNOWN)).toThrow(/^soak needs one/);
    },
  );

  it("has the proof that every check finds its faults among its parts", () => {
    expect(Object.keys(PARTS)).toContain("detection");
  });
});
