import { describe, expect, it } from "vitest";
import { reviewWalk, type Walk, YARDSTICKS } from "../../../lib/gait";
import { liftAhead, walk } from "../../support/walk";

/** The right hip of the left down put lower from ahead, as a tap on another joint puts it. Leg lengths. */
const mistaken = (by: number): Walk => liftAhead(walk(), "left down", ["right-hip"], -by);

const toldBy = (drawn: Walk, yardstick: (typeof YARDSTICKS)[number]) =>
  reviewWalk(drawn, yardstick).remarks.map(({ check }) => check);

describe("the hips of a step", () => {
  it.each(YARDSTICKS.filter((one) => one !== "version"))(
    "are not moved by one hip mark that only the front view has elsewhere, by %s",
    (yardstick) => {
      const told = toldBy(mistaken(0.83), yardstick);
      expect(told).toContain("views");
      expect(told).not.toContain("hip-range");
      expect(told).not.toContain("hip-order");
    },
  );

  it("are the mean of both views as long as these agree within what passes as one height", () => {
    const high = (drawn: Walk) =>
      reviewWalk(drawn, "trade").findings.find(
        ({ check, panels }) => check === "hip-range" && panels.includes("left down"),
      );
    const plain = high(walk());
    const leant = high(mistaken(0.08));
    if (plain?.kind !== "sound" || leant?.kind !== "sound") throw new Error("both steps are sound");
    const lower = (leant.measured?.value ?? Number.NaN) - (plain.measured?.value ?? Number.NaN);
    expect(lower).toBeCloseTo(0.08 / 4, 3); // one mark of four
  });
});
