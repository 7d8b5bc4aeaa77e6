import { describe, expect, it } from "vitest";
import { tellLimit, tellTrips } from "../../../app/_methods/tell-limit";
import { METHODS } from "../../../lib/gait";

describe("a limit in words", () => {
  it("tells leg lengths and shares in percent, without noughts that say nothing", () => {
    expect(tellLimit({ fires: "above", value: 0.05, unit: "leg" })).toBe("above 5 % of a leg");
    expect(tellLimit({ fires: "below", value: -0.005, unit: "leg" })).toBe("below −0.5 % of a leg");
    expect(tellLimit({ fires: "outside", value: [0.4, 0.7], unit: "share" })).toBe(
      "outside 40 to 70 %",
    );
  });

  it("makes degrees of radians, and one number of a span that is alike to both sides", () => {
    const ten = (10 * Math.PI) / 180;
    expect(tellLimit({ fires: "above", value: 0.38 * ten, unit: "rad" })).toBe("above 3.8°");
    expect(tellLimit({ fires: "outside", value: [-ten, ten], unit: "rad" })).toBe("beyond ± 10°");
  });

  it("says frame or frames, pose or poses", () => {
    expect(tellLimit({ fires: "above", value: 1, unit: "frames" })).toBe("above 1 frame");
    expect(tellLimit({ fires: "above", value: 2, unit: "frames" })).toBe("above 2 frames");
    expect(tellLimit({ fires: "below", value: 4, unit: "poses" })).toBe("below 4 poses");
  });

  it.each(METHODS.flatMap(({ check, limits }) => limits.map((limit) => ({ check, limit }))))(
    "is a figure with its unit: $check, $limit.of, $limit.level",
    ({ limit }) => {
      expect(tellLimit(limit)).toMatch(/^(above|below|outside|beyond ±) −?\d/);
      expect(tellLimit(limit)).not.toMatch(/NaN|undefined|\d\.\d{3}/);
    },
  );
});

describe("how often captured walks trip it", () => {
  it("tells none from what was not counted", () => {
    expect(tellTrips(0)).toBe("none");
    expect(tellTrips(null)).toBe("not counted");
    expect(tellTrips(0.035)).toBe("3.5 %");
    expect(tellTrips(1 / 22)).toBe("4.5 %");
  });
});
