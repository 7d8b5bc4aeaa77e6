import { describe, expect, it } from "vitest";
import { legLength, type PoseMarks, type ViewMarks } from "../../../lib/body";
import reference from "../../reference/captured-strides.json";
import { capturedWalk } from "../../support/captured";

/** One leg hanging straight from y = 660, its ankle at 1046; ± 3 units a mark. */
const straight: ViewMarks = {
  "left-hip": { x: 360, y: 660, precision: 3 },
  "left-knee": { x: 360, y: 853, precision: 3 },
  "left-ankle": { x: 360, y: 1046, precision: 3 },
};
const pose = (side: ViewMarks, front: ViewMarks = {}): PoseMarks => ({ side, front });

/** The marks of some joints alone. */
function only(side: ViewMarks, parts: readonly string[]): PoseMarks {
  return pose(
    Object.fromEntries(
      Object.entries(side).filter(([joint]) => parts.some((part) => joint.endsWith(part))),
    ),
  );
}

/** The same drawn larger or smaller, on the same ground. */
function scaled(side: ViewMarks, factor: number): ViewMarks {
  return Object.fromEntries(
    Object.entries(side).map(([joint, mark]) => [
      joint,
      { ...mark, x: 360 + factor * (mark.x - 360), y: 1080 + factor * (mark.y - 1080) },
    ]),
  );
}

describe("leg length", () => {
  it("adds hip to knee, knee to ankle and the ankle's height on the stand", () => {
    const leg = legLength([pose(straight)], []);
    expect(leg).toMatchObject({ kind: "value", value: 420, from: "stand" });
  });

  it("stands on the sole that was marked rather than on the ground line", () => {
    const heel = { x: 340, y: 1076, precision: 3 };
    expect(legLength([pose({ ...straight, "left-heel": heel })], [])).toMatchObject({ value: 416 });
  });

  it("reads a stand that is drawn from the front alone", () => {
    expect(legLength([pose({}, straight)], [])).toMatchObject({ value: 420, from: "stand" });
  });

  describe.each(reference.walks)("of clip $clip", (captured) => {
    const drawn = capturedWalk(captured).panels.map(({ marks }) => marks);
    const quick = drawn.map(({ side }) => only(side, ["hip", "knee", "heel", "toe"]));
    const stand = quick[2] ?? pose({}); // at passing the leg stands nearly straight

    it("takes the heel of a stand that has no ankle, hips alone in the poses", () => {
      const hips = drawn.map(({ side }) => only(side, ["hip"]));
      const leg = legLength([stand], hips);
      if (leg.kind !== "value") throw new Error(leg.needs);
      expect(leg.from).toBe("stand");
      expect(Math.abs(leg.value - 420)).toBeLessThan(leg.plusMinus);
    });

    it("believes no stand of another size than the poses", () => {
      const needs = "the stand and the poses drawn at one size";
      for (const factor of [0.6, 1.5]) {
        const other = pose(scaled(stand.side, factor));
        expect(legLength([other], quick)).toEqual({ kind: "cannot-tell", needs });
        const front = pose({}, scaled(drawn[2]?.side ?? {}, factor));
        expect(legLength([front], drawn)).toEqual({ kind: "cannot-tell", needs });
        expect(legLength([other], []).kind).toBe("value");
      }
      for (const factor of [0.92, 1.08]) {
        expect(legLength([pose(scaled(stand.side, factor))], quick).kind).toBe("value");
      }
    });
  });

  it("takes a build with high ankles for no other size", () => {
    const booted: ViewMarks = {
      "left-hip": { x: 360, y: 660, precision: 1 },
      "left-knee": { x: 360, y: 800, precision: 1 },
      "left-ankle": { x: 360, y: 940, precision: 1 }, // a third of the leg over the ground
    };
    expect(legLength([pose(booted)], [pose(booted)])).toMatchObject({ value: 420, from: "stand" });
  });

  it("carries the uncertainty of its marks", () => {
    expect(legLength([pose(straight)], [])).toMatchObject({ plusMinus: Math.hypot(3, 3, 3, 3, 3) });
  });

  it("takes the median of the poses without a marked stand, and says so", () => {
    const longer = { ...straight, "left-ankle": { x: 360, y: 1056, precision: 3 } };
    const leg = legLength(
      [pose({})],
      [straight, straight, longer].map((side) => pose(side)),
    );
    expect(leg).toMatchObject({ kind: "value", from: "panels" });
    expect(leg.kind === "value" && leg.value).toBeCloseTo(386 * 1.079, 6);
  });

  it.each(reference.walks)("reads clip $clip by its heels alone, within its own ±", (captured) => {
    const poses = capturedWalk(captured).panels.map(({ marks }) => {
      const { "left-ankle": _left, "right-ankle": _right, ...side } = marks.side;
      return { ...marks, side };
    });
    const leg = legLength([], poses);
    if (leg.kind !== "value") throw new Error(leg.needs);
    expect(leg.from).toBe("heels");
    expect(Math.abs(leg.value - 420)).toBeLessThan(leg.plusMinus);
    expect(Math.abs(leg.value / 420 - 1)).toBeLessThan(0.01); // medians strayed by 0.3 % in the source
  });

  it("says what it needs when no leg is marked whole", () => {
    const { "left-knee": _knee, ...marks } = straight;
    expect(legLength([], [pose(marks)])).toEqual({
      kind: "cannot-tell",
      needs: "a hip, knee and ankle or heel of one leg marked in a side view",
    });
  });

  it("does not read a mark that is no number", () => {
    const knee = { x: Number.NaN, y: 853, precision: 3 };
    expect(legLength([pose({ ...straight, "left-knee": knee })], []).kind).toBe("cannot-tell");
  });

  it.each(reference.walks)("agrees with the skeleton of clip $clip to 0.6 %", (captured) => {
    // Seen from the side a leg is foreshortened: thigh and shank to 0.98–1.00 of their length.
    const leg = legLength(
      [],
      capturedWalk(captured).panels.map(({ marks }) => marks),
    );
    expect(leg.kind).toBe("value");
    const value = leg.kind === "value" ? leg.value : Number.NaN;
    expect(Math.abs(value / 420 - 1)).toBeLessThan(0.006); // the builder draws its leg at 420
  });
});
