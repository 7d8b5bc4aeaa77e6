import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { describe, expect, it } from "vitest";
import { fontOf, measureShipped, missingLetters, WEIGHTS } from "../../../lib/export";
import { advancesOf } from "./font-tables";

const { resolve } = createRequire(import.meta.url);
const FOLDERS = { 400: "400Regular", 600: "600SemiBold", 700: "700Bold" };
const fontFile = (weight: keyof typeof FOLDERS) => {
  const folder = FOLDERS[weight];
  const file = `${folder}/AtkinsonHyperlegibleNext_${folder}.ttf`;
  return readFileSync(resolve(`@expo-google-fonts/atkinson-hyperlegible-next/${file}`));
};

describe("the shipped family", () => {
  it.each(WEIGHTS)("has the widths of its own file in weight %i", (weight) => {
    const advances = advancesOf(fontFile(weight));
    expect(advances.size).toBeGreaterThan(300);
    for (const [code, width] of advances) {
      const letter = String.fromCodePoint(code);
      if (code <= 0x20 || code === 0x7f || code === 0xad) continue; // has no shape
      expect([letter, measureShipped(letter, { size: 1000, weight })]).toEqual([
        letter,
        expect.closeTo(width, 6),
      ]);
    }
  });

  it.each(WEIGHTS)("can line figures up in weight %i: the file holds a tnum feature", (weight) => {
    const font = fontFile(weight);
    expect(font.includes("tnum", 0, "latin1")).toBe(true);
  });

  it("adds widths up and grows with the size", () => {
    const small = measureShipped("down", { size: 10, weight: 400 });
    expect(measureShipped("down", { size: 20, weight: 400 })).toBeCloseTo(2 * small, 9);
    expect(measureShipped("downdown", { size: 10, weight: 400 })).toBeCloseTo(2 * small, 9);
  });

  it("gives letters it lacks a width, too, and names them", () => {
    expect(measureShipped("歩", { size: 10, weight: 400 })).toBe(10);
    expect(missingLetters("Chůze 歩行 → Ходьба")).toEqual([..."歩行→Ходьба"]);
    expect(missingLetters("Brindle carries: 24 fps, 12 °, ½, “x”")).toEqual([]);
  });

  it("is spelt as a canvas wants it", () => {
    expect(fontOf({ size: 14, weight: 600 })).toBe(
      '600 14px "Atkinson Hyperlegible Next", sans-serif',
    );
  });
});
