import { describe, expect, it } from "vitest";
import { reviewWalk, type Walk } from "../../../../lib/gait";
import { raise, unmark, walk } from "../../../support/walk";

const GAP = 3; // frames from the last up of the built walk to the contact that ends it

const seamOf = (judged: Walk) => reviewWalk(judged, "trade").strideReadings[0]?.seam;

describe("the hips' speed across the seam", () => {
  it("is nothing where both steps are alike and the loop closes", () => {
    const seam = seamOf(walk());
    expect(seam).toMatchObject({ kind: "value", unit: "leg/frame" });
    expect(seam).toHaveProperty("value", expect.closeTo(0, 9));
  });

  it("rises by what the hips fall faster before it, over the frames that they have", () => {
    expect(seamOf(raise(walk(), "right up", 0.03))).toHaveProperty(
      "value",
      expect.closeTo(0.03 / GAP, 6),
    );
  });

  it("is as sure as the seven heights that it is read from", () => {
    const seam = seamOf(walk({ precision: 0.006 }));
    // Six heights over three frames each, and the middle contact's over both of its gaps.
    const one = 0.006 / Math.sqrt(2) / GAP;
    const atMost = Math.SQRT2 * Math.sqrt(6 + 4) * one;
    expect(seam?.kind === "value" ? seam.plusMinus : 1).toBeLessThanOrEqual(atMost + 1e-9);
    expect(seam?.kind === "value" ? seam.plusMinus : 0).toBeGreaterThan(one);
  });

  it("cannot be told where the pose before it has no hips", () => {
    const bare = unmark(walk(), "right up", ["left-hip", "right-hip"]);
    expect(seamOf(bare)).toMatchObject({
      kind: "cannot-tell",
      needs: expect.stringContaining("hips marked"),
    });
  });
});
