import { describe, expect, it } from "vitest";
import { PALETTE } from "../../../lib/export";
import { contrast } from "./contrast";

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
