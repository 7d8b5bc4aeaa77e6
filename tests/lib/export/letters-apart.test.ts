import { describe, expect, it } from "vitest";
import { lettersApart } from "../../../lib/export/letters-apart";

const pair = (left: number, right: number, lower = 0) =>
  [
    { text: "L", at: { x: left, y: 0 } },
    { text: "R", at: { x: right, y: lower } },
  ] as const;
const xs = (letters: ReturnType<typeof lettersApart>) => letters.map(({ at }) => at.x);

describe("letters over joints that lie close", () => {
  it("are moved aside as far as each other, until one letter's width is between them", () => {
    expect(xs(lettersApart(pair(10, 12), 8))).toEqual([7, 15]);
  });

  it("keep the side on which they stand", () => {
    expect(xs(lettersApart(pair(12, 10), 8))).toEqual([15, 7]);
  });

  it("go to their own sides by name where the joints lie on each other", () => {
    expect(xs(lettersApart(pair(10, 10), 8))).toEqual([6, 14]);
  });

  it("stay where they are when they do not touch, beside or under each other", () => {
    const beside = pair(10, 18);
    const under = pair(10, 10, 10.1);
    expect(lettersApart(beside, 8)).toBe(beside);
    expect(lettersApart(under, 8)).toBe(under);
  });

  it("stay where they are when there is one, or none", () => {
    expect(lettersApart([], 8)).toEqual([]);
    const [one] = pair(3, 4);
    expect(lettersApart([one], 8)).toEqual([one]);
  });
});
