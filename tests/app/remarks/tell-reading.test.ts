import { describe, expect, it } from "vitest";
import { tellPanelReading, tellReading } from "../../../app/_remarks/tell-reading";

const leg = (value: number, plusMinus: number) => tellReading({ value, plusMinus, unit: "leg" });

describe("a reading in words", () => {
  it("tells leg lengths in two decimals, in three where they are known that well", () => {
    expect(leg(0.9312, 0.0125)).toBe("0.93 ± 0.01 leg");
    expect(leg(0.9312, 0.0035)).toBe("0.931 ± 0.004 leg");
    expect(leg(0.05, 0)).toBe("0.05 leg");
  });

  it("never reads as exact when it is not", () => {
    expect(leg(0.93, 0.0001)).toBe("0.930 ± 0.001 leg");
    expect(tellReading({ value: 0.35, plusMinus: 0.001, unit: "rad" })).toBe("20.1 ± 0.1°");
  });

  it("makes degrees of radians, and percent of shares", () => {
    expect(tellReading({ value: Math.PI / 6, plusMinus: Math.PI / 60, unit: "rad" })).toBe(
      "30 ± 3°",
    );
    expect(tellReading({ value: 0.6, plusMinus: 0.04, unit: "share" })).toBe("60 ± 4 %");
  });

  it("says frame or frames", () => {
    expect(tellReading({ value: 1, plusMinus: 0, unit: "frames" })).toBe("1 frame");
    expect(tellReading({ value: 4, plusMinus: 0, unit: "frames" })).toBe("4 frames");
  });

  it("writes below zero with a true minus, and nothing as nothing", () => {
    expect(leg(-0.02, 0)).toBe("−0.02 leg");
    expect(leg(-0.001, 0)).toBe("0.00 leg");
  });
});

describe("a panel's reading in words", () => {
  const rad = (degrees: number) => ({
    kind: "value" as const,
    value: (degrees * Math.PI) / 180,
    plusMinus: (2 * Math.PI) / 180,
    unit: "rad" as const,
  });

  it("tells which way a foot is pitched", () => {
    const pitch = (degrees: number) =>
      tellPanelReading({ id: "foot-pitch", side: "left", answer: rad(degrees) });
    expect(pitch(12)).toBe("12 ± 2° toe up");
    expect(pitch(-30)).toBe("30 ± 2° toe down");
    expect(pitch(0.2)).toBe("0 ± 2°");
    expect(pitch(-1)).toBe("1 ± 2° toe up or down");
  });

  it("tells a knee that bends the other way", () => {
    const knee = (degrees: number) =>
      tellPanelReading({ id: "knee-bend", side: "right", answer: rad(degrees) });
    expect(knee(21)).toBe("21 ± 2°");
    expect(knee(-8)).toBe("8 ± 2° the other way");
  });

  it("answers yes or no where a number would say less", () => {
    const flat = (value: boolean) =>
      tellPanelReading({
        id: "weight-foot-flat",
        side: "left",
        answer: { kind: "yes-no", value },
      });
    expect(flat(true)).toBe("yes");
    expect(flat(false)).toBe("no");
  });

  it("has no value where none could be read", () => {
    const answer = { kind: "cannot-tell" as const, needs: "a hip marked" };
    expect(tellPanelReading({ id: "hip-height", side: null, answer })).toBeNull();
  });
});
