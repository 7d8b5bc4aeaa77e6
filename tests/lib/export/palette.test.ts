import { describe, expect, it } from "vitest";
import { PALETTE } from "../../../lib/export";

/** Relative luminance and contrast, Web Content Accessibility Guidelines 2.2, definitions. */
function luminance(colour: string): number {
  const [red = 0, green = 0, blue = 0] = [1, 3, 5].map((at) => {
    const share = Number.parseInt(colour.slice(at, at + 2), 16) / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

function contrast(one: string, other: string): number {
  const [dark = 0, light = 0] = [luminance(one), luminance(other)].sort((a, b) => a - b);
  return (light + 0.05) / (dark + 0.05);
}

describe("the palette", () => {
  it("measures black on white as the guidelines do", () => {
    expect(contrast("#000000", "#ffffff")).toBeCloseTo(21, 6);
  });

  it.each(["text", "faintText", "graphite", "left", "right", "raspberry", "olive"] as const)(
    "keeps %s at 4.5 : 1 on page and paper",
    (ink) => {
      expect(contrast(PALETTE[ink], PALETTE.page)).toBeGreaterThanOrEqual(4.5);
      expect(contrast(PALETTE[ink], PALETTE.paper)).toBeGreaterThanOrEqual(4.5);
    },
  );

  it("keeps the gaps' figures at 4.5 : 1 on their chips", () => {
    expect(contrast(PALETTE.text, PALETTE.band)).toBeGreaterThanOrEqual(4.5);
    expect(contrast(PALETTE.raspberry, PALETTE.raspberryWash)).toBeGreaterThanOrEqual(4.5);
  });
});
