import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { JOINTS } from "../../../lib/body";
import { placesOf, reviewWalk, type Walk, type WalkPanel, withTravel } from "../../../lib/gait";
import { dice } from "../../support/dice";
import { drawnAside, FOOT, middled, panelOf, placeIn, solved } from "../../support/drawn-aside";
import { type PanelName, push, unmark, walk, withPanel } from "../../support/walk";

const STEP = 12 * walk().advance; // leg lengths

const WALKING = walk().panels.slice(1); // without the stand

describe("places on the ground", () => {
  it("follow the travel or a hand unless they are to be solved, and say so", () => {
    const some = withPanel({ ...walk(), travel: "travelling" }, "left down", { place: 2 });
    expect(placeIn(some, { id: "left down" })).toEqual({ kind: "set", x: 2, plusMinus: 0 });
    const follows = placeIn(some, { id: "left contact" });
    expect(follows).toEqual({ kind: "travel", x: 12 * some.advance, plusMinus: 0 });
    expect(placeIn({ ...some, travel: "on-the-spot" }, { id: "left down" }).kind).toBe("travel");
  });

  it("are solved so that planted feet stay still, wherever on its paper each pose was drawn", () => {
    const asides = fc.array(fc.double({ min: -0.8, max: 0.8, noNaN: true }), {
      minLength: WALKING.length,
      maxLength: WALKING.length,
    });
    fc.assert(
      fc.property(asides, (by) => {
        const at = new Map(WALKING.map(({ id }, index) => [id, by[index] ?? 0]));
        const moved = solved(drawnAside(walk(), ({ id }) => at.get(id) ?? 0));
        const [first] = WALKING;
        const start = at.get(first?.id ?? "") ?? 0;
        for (const panel of WALKING) {
          const { kind, x } = placeIn(moved, panel);
          expect(kind).toBe("solved");
          const really = walk().advance * (panel.frame - 1) - (at.get(panel.id) ?? 0) + start;
          expect(x).toBeCloseTo(really, 9);
        }
      }),
      { numRuns: 40, seed: 6 },
    );
  });

  it("give the readings of the ground that by travel are had with every panel in its place", () => {
    const drawn = reviewWalk(solved(middled()), "trade");
    const meant = reviewWalk(walk(), "trade");
    const lengths = ({ stepReadings }: typeof drawn) =>
      stepReadings.map(({ length }) =>
        length.kind === "value" ? length.value.toFixed(9) : length,
      );
    expect(lengths(drawn)).toEqual(lengths(meant));
    expect(drawn.remarks).toEqual([]);
    expect(reviewWalk(middled(), "trade").remarks.map(({ check }) => check)).toContain("slide");
  });

  it("leave a length between two of them as vague as they are, and no vaguer where they are known", () => {
    const plusMinus = (of: Walk) =>
      reviewWalk(of, "trade").stepReadings.map(({ length }) =>
        length.kind === "value" ? length.plusMinus : Number.NaN,
      );
    const known = plusMinus(walk());
    const spread = plusMinus(solved(middled()));
    expect(known.length).toBe(2);
    for (const [nth, marks] of known.entries()) {
      expect(marks).toBeLessThan(0.01);
      expect(spread[nth]).toBeGreaterThan(2 * marks);
      expect(spread[nth]).toBeLessThan(0.05);
    }
    const placed = WALKING.reduce(
      (so, { id }) => withPanel(so, id as PanelName, { place: placeIn(so, { id }).x }),
      solved(middled()),
    );
    expect(plusMinus(placed)).toEqual(known);
    expect(plusMinus(withTravel(walk(), "travelling"))).toEqual(known);
    expect(plusMinus(withTravel(placed, "on-the-spot"))).toEqual(known);
  });

  it("leave it as vague where a chain hangs by another, through a panel without a planted foot", () => {
    const torn = unmark(solved(middled()), "right contact", [
      "right-heel",
      "left-ball",
      "left-toe",
    ]);
    const parts = reviewWalk(torn, "trade").stepReadings;
    for (const { length } of parts) {
      if (length.kind !== "value") throw new Error("no length");
      expect(length.plusMinus).toBeGreaterThan(0.01);
      expect(length.plusMinus).toBeLessThan(0.1);
    }
  });

  it("cover the true step length within twice their ±, drawn with a pencil's and a foot's unrest", () => {
    const throws = dice(31);
    const unit = () => throws.below(2001) / 1000 - 1;
    const thrown = () => unit() + unit() + unit(); // its standard deviation is 1
    const offs = Array.from({ length: 20 }, () => {
      const drawn = JOINTS.filter((joint) => /heel|ball|toe|ankle/.test(joint)).reduce(
        (so, joint) => {
          const unrest = joint.endsWith("ankle") ? 0.005 : 0.015; // leg lengths
          const shaken = (then: Walk, { id }: WalkPanel) =>
            push(then, id as PanelName, [joint], unrest * thrown());
          return WALKING.reduce(shaken, so);
        },
        solved(middled()),
      );
      return reviewWalk(drawn, "trade").stepReadings.map(({ length }) =>
        length.kind === "value" ? Math.abs(length.value - STEP) / length.plusMinus : Number.NaN,
      );
    }).flat();
    const covered = offs.filter((off) => off < 2).length / offs.length;
    expect(covered).toBeGreaterThanOrEqual(0.95);
  });

  it("hold where they were set by hand, and hang the others by those", () => {
    const set = withPanel(solved(middled()), "left passing", { place: 40 });
    expect(placeIn(set, { id: "left passing" })).toEqual({ kind: "set", x: 40, plusMinus: 0 });
    const unset = placesOf(solved(middled()));
    const [passing, end] = [panelOf(set, "left passing"), panelOf(set, "end")];
    expect(placeIn(set, end).x - 40).toBeCloseTo(unset(end).x - unset(passing).x, 9);
    expect(placeIn(set, end).kind).toBe("solved");
  });

  it("spread what two set places and the planted feet between them disagree by", () => {
    const places = placesOf(solved(middled()));
    const [first, last] = [panelOf(middled(), "left contact"), panelOf(middled(), "end")];
    const once = withPanel(solved(middled()), "left contact", { place: 0 });
    const far = places(last).x - places(first).x + 0.3;
    const both = withPanel(once, "end", { place: far });
    const middle = placeIn(both, { id: "right contact" }).x;
    const asDrawn = places(panelOf(middled(), "right contact")).x - places(first).x;
    expect(middle - asDrawn).toBeGreaterThan(0.08);
    expect(middle - asDrawn).toBeLessThan(0.22);
  });

  it("go on from the panel before where no planted foot is marked", () => {
    const bare = unmark(solved(middled()), "right contact", [
      ...FOOT,
      "right-heel",
      "right-ball",
      "right-toe",
    ]);
    const [up, contact, down] = (["left up", "right contact", "right down"] as const).map((id) =>
      placeIn(bare, { id }),
    );
    expect([up?.kind, contact?.kind, down?.kind]).toEqual(["solved", "travel", "solved"]);
    expect((contact?.x ?? 0) - (up?.x ?? 0)).toBeCloseTo(3 * bare.advance, 9);
    expect((down?.x ?? 0) - (contact?.x ?? 0)).toBeCloseTo(3 * bare.advance, 9);
  });

  it("are told less exactly the further they hang from what is known", () => {
    const places = placesOf(solved(middled()));
    const spread = WALKING.map((panel) => places(panel).plusMinus);
    expect(spread[0]).toBe(0);
    expect(spread.at(-1)).toBeGreaterThan(spread[2] ?? 0);
    expect(spread.every((one) => Number.isFinite(one) && one < 0.1)).toBe(true);
  });

  it("are followed by the travel alone without a leg length, a side or a mark", () => {
    const bare = solved({
      ...walk(),
      panels: WALKING.map((panel) => ({ ...panel, marks: { side: {}, front: {} } })),
    });
    for (const panel of bare.panels) {
      expect(placesOf(bare)(panel)).toEqual({
        kind: "travel",
        x: bare.advance * (panel.frame - 1),
        plusMinus: 0,
      });
    }
  });
});
