import { describe, expect, it } from "vitest";
import {
  ellipsise,
  type Face,
  type MeasureText,
  spread,
  wrapAtMost,
  wrapText,
} from "../../../lib/export";

const face: Face = { size: 1, weight: 400 };
const letters: MeasureText = (text) => [...text].length; // one unit a letter

describe("wrapping", () => {
  it("breaks between words where the line ends", () => {
    expect(wrapText("the hips sink on the down", face, 9, letters)).toEqual([
      "the hips",
      "sink on",
      "the down",
    ]);
  });

  it("breaks a word that is wider than a line by itself", () => {
    expect(wrapText("so Donaudampfschiff it is", face, 8, letters)).toEqual([
      "so",
      "Donaudam",
      "pfschiff",
      "it is",
    ]);
  });

  it("makes no lines of nothing", () => {
    expect(wrapText("  \n ", face, 8, letters)).toEqual([]);
  });

  it("keeps pairs of code units whole", () => {
    expect(wrapText("\u{1F463}\u{1F463}\u{1F463}", face, 2, letters)).toEqual([
      "\u{1F463}\u{1F463}",
      "\u{1F463}",
    ]);
  });

  it("ends the last allowed line in an ellipsis", () => {
    expect(wrapAtMost("one two three four five", face, 9, letters, 2)).toEqual([
      "one two",
      "three fo…",
    ]);
  });

  it("shortens only what does not fit", () => {
    expect(ellipsise("short", face, 5, letters)).toBe("short");
    expect(ellipsise("longer", face, 5, letters)).toBe("long…");
  });
});

describe("labels along a line", () => {
  const edges = { left: 0, right: 100 };

  it("leaves labels where they are while they do not touch", () => {
    const wishes = [
      { at: 20, width: 10 },
      { at: 50, width: 10 },
    ];
    expect(spread(wishes, edges, 4)).toEqual([20, 50]);
  });

  it("moves labels apart to the right where they begin at the left end", () => {
    const wishes = [
      { at: 5, width: 10 },
      { at: 6, width: 10 },
    ];
    expect(spread(wishes, edges, 4)).toEqual([5, 19]);
  });

  it("moves labels apart, in their order, within the ends", () => {
    const wishes = [
      { at: 95, width: 10 },
      { at: 96, width: 10 },
      { at: 97, width: 10 },
    ];
    expect(spread(wishes, edges, 4)).toEqual([67, 81, 95]);
  });
});
