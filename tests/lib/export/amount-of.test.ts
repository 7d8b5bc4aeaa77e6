import { describe, expect, it } from "vitest";
import { amountOf } from "../../../lib/export";

describe("an amount on a label", () => {
  it.each([
    ["share", 0.125, "12.5 %"],
    ["frames", 1, "1 frame"],
    ["frames", 2.5, "2.5 frames"],
    ["rad/frame", Math.PI / 18, "10° a frame"],
    ["leg/frame", 0.061, "6.1 % a frame"],
    ["times", 3.2, "3.2×"],
    ["number", 0.517, "0.52"],
    ["poses", 2, "2 poses"],
    ["m/s", 1.234, "1.23 m/s"],
  ] as const)("says its unit: %s", (unit, value, text) => {
    expect(amountOf({ value, plusMinus: 0, unit })).toBe(text);
  });
});
