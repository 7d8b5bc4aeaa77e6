import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { JOINTS, type JointName, type Mark, type ViewMarks } from "../../../lib/body";
import { placesOf, reviewWalk, type Walk, type WalkPanel, withTravel } from "../../../lib/gait";
import reference from "../../reference/captured-strides.json";
import { capturedWalk } from "../../support/captured";
import { dice } from "../../support/dice";
import { type PanelName, push, unmark, walk, withPanel } from "../../support/walk";

const LEG = 420; // panel units a leg in the built walk
const STEP = 12 * walk().advance; // leg lengths

/** The walk with each drawing moved aside on its paper, leg lengths. */
function drawnAside(from: Walk, aside: (panel: WalkPanel) => number): Walk {
  const moved = (marks: ViewMarks, by: number): ViewMarks =>
    Object.fromEntries(
      Object.entries(marks).map(([joint, mark]: [string, Mark]) => [
        joint,
        { ...mark, x: mark.x + by * LEG },
      ]),
    );
  const panels = from.panels.map((panel) => ({
    ...panel,
    marks: { ...panel.marks, side: moved(panel.marks.side, aside(panel)) },
  }));
  return { ...from, panels };
}

/** How far aside a pose was drawn by somebody who lets no ground go by, leg lengths. */
const ASIDE: Readonly<Record<string, number>> = {
  contact: -0.06,
  down: 0.02,
  passing: 0.1,
  up: 0.03,
};
const middled = (): Walk => drawnAside(walk(), ({ pose }) => ASIDE[pose] ?? 0);
const solved = (from: Walk): Walk => ({ ...from, ground: "solved" });
const panelOf = (from: Walk, id: PanelName) => {
  const panel = from.panels.find((one) => one.id === id);
  if (panel === undefined) throw new Error(`no panel ${id}`);
  return panel;
};
const WALKING = walk().panels.slice(1); // without the stand
const placeIn = (from: Walk, { id }: { id: string }) =>
  placesOf(from)(panelOf(from, id as PanelName));
const slides = (judged: Walk, yardstick: "trade" | "life" = "trade") =>
  reviewWalk(judged, yardstick).findings.filter(({ check }) => check === "slide");
const told = (findings: ReturnType<typeof slides>) =>
  findings.map(({ kind, side }) => `${kind} ${side}`);

const FOOT: readonly JointName[] = ["left-heel", "left-ball", "left-toe", "left-ankle"];

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

describe.each(reference.walks)("the solved places of captured walk $clip", (captured) => {
  const true_ = capturedWalk(captured);
  const blind: Walk = {
    ...true_,
    ground: "solved",
    panels: true_.panels.map((panel) => ({ ...panel, place: null })),
  };

  it("are the walker's own, within twice their ±", () => {
    const places = placesOf(blind);
    const [first] = blind.panels;
    const start = true_.panels[0]?.place ?? 0;
    for (const [index, panel] of blind.panels.entries()) {
      const { x, plusMinus } = places(panel);
      const really = (true_.panels[index]?.place ?? 0) - start;
      const off = x - (first === undefined ? 0 : places(first).x) - really;
      expect(Math.abs(off)).toBeLessThan(2 * plusMinus + 1e-9);
    }
  });

  it("tell his step lengths within twice their ±", () => {
    const lengths = (of: Walk) =>
      reviewWalk(of, "life").stepReadings.flatMap(({ length }) =>
        length.kind === "value" ? [length] : [],
      );
    const [really, seen] = [lengths(true_), lengths(blind)];
    expect(seen.length).toBe(really.length);
    for (const [nth, { value, plusMinus }] of seen.entries()) {
      expect(Math.abs(value - (really[nth]?.value ?? 0))).toBeLessThan(2 * plusMinus);
    }
  });

  it("bring no slide to show by life", () => {
    expect(slides(blind, "life").filter(({ kind }) => kind === "remark")).toEqual([]);
  });
});

describe("a slide on solved places", () => {
  it("is not told of a foot by which they were solved: a whole foot cannot be seen to move", () => {
    const pushed = solved(push(middled(), "left passing", FOOT, 0.1));
    const found = slides(pushed);
    expect(found.filter(({ kind }) => kind === "remark")).toEqual([]);
    const needs = found.flatMap((one) => (one.kind === "cannot-tell" ? [one.needs] : []));
    expect(needs.length).toBe(2);
    for (const need of needs) expect(need).toMatch(/places were solved from this foot/);
  });

  it("shows where the ball moves against the heel of its own foot", () => {
    const pushed = solved(push(middled(), "left passing", ["left-ball", "left-toe"], 0.1));
    const [remark] = slides(pushed).filter(({ kind }) => kind === "remark");
    if (remark?.kind !== "remark") throw new Error("the ball moved");
    expect(remark.side).toBe("left");
    expect(remark.panels).toEqual(["left down", "left passing"]);
    expect(remark.measured.value).toBeCloseTo(0.1, 9);
    expect(remark.why).toMatch(/placed so that planted feet stay still/);
  });

  it("shows where a hand has set the places between which the foot moved", () => {
    const really = (from: Walk, id: PanelName) => placeIn(solved(from), { id }).x;
    const set = (["left contact", "left passing"] as const).reduce(
      (so, id) => withPanel(so, id, { place: really(middled(), id) }),
      solved(push(middled(), "left passing", FOOT, 0.1)),
    );
    expect(told(slides(set))).toContain("remark left");
    const [remark] = slides(set).filter(({ kind }) => kind === "remark");
    expect(remark?.kind === "remark" && remark.measured.value).toBeCloseTo(0.1, 9);
  });

  it("shows where both feet are down on two panels and come apart", () => {
    const early = withPanel(walk(), "right down", { frame: 26 });
    const passed = 2 * early.advance;
    const both = drawnAside(early, ({ id }) => (id === "right down" ? passed : 0));
    const behind: readonly JointName[] = ["left-heel", "left-ball", "left-toe", "left-ankle"];
    const still = panelOf(both, "right contact");
    const gone = early.advance; // one frame on
    const planted = withPanel(both, "right down", {
      marks: {
        ...panelOf(both, "right down").marks,
        side: {
          ...panelOf(both, "right down").marks.side,
          ...Object.fromEntries(
            behind.map((joint) => {
              const mark = still.marks.side[joint];
              return [joint, mark && { ...mark, x: mark.x - gone * LEG }];
            }),
          ),
        },
      },
    });
    const sound = slides(solved(planted), "life").filter(({ side }) => side === "right");
    expect(sound.map(({ kind }) => kind)).not.toContain("remark");
    const apart = push(planted, "right down", ["right-heel"], 0.12);
    const [remark] = slides(solved(apart), "life").filter(({ kind }) => kind === "remark");
    if (remark?.kind !== "remark") throw new Error("the feet came apart");
    expect(remark.side).toBe("right");
    expect(Math.abs(remark.measured.value)).toBeGreaterThan(0.1);
  });
});
