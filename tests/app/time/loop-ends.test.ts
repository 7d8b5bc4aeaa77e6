import { describe, expect, it } from "vitest";
import { nearestEnd, nextEnd, standing } from "../../../app/_time/loop-ends";

const panels = [1, 4, 7, 13, 25].map((frame) => ({ frame }));

describe("an end of the loop", () => {
  it("stands on the panel nearest to the hand, and never at or past its other end", () => {
    expect(nearestEnd({ panels, end: "to", other: 7 }, 18)).toBe(13);
    expect(nearestEnd({ panels, end: "to", other: 7 }, 2)).toBe(13);
    expect(nearestEnd({ panels, end: "from", other: 7 }, 30)).toBe(4);
    expect(nearestEnd({ panels, end: "from", other: 1 }, 30)).toBeNull();
  });

  it("goes from panel to panel, and stops at the last", () => {
    expect(nextEnd({ panels, end: "to", other: 1 }, 25, -1)).toBe(13);
    expect(nextEnd({ panels, end: "to", other: 1 }, 25, 1)).toBeNull();
    expect(nextEnd({ panels, end: "to", other: 7 }, 13, -1)).toBeNull();
    expect(nextEnd({ panels, end: "from", other: 13 }, 1, 1)).toBe(4);
  });

  it("is shown at the strip's own end where its panel has left", () => {
    expect(standing(panels, 13, "to")).toBe(13);
    expect(standing(panels, 100_000, "to")).toBe(25);
    expect(standing(panels, 3, "from")).toBe(1);
  });
});
