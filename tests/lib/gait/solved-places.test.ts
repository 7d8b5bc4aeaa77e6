import { describe, expect, it } from "vitest";
import type { JointName } from "../../../lib/body";
import { placesOf, reviewWalk, type Walk } from "../../../lib/gait";
import reference from "../../reference/captured-strides.json";
import { capturedWalk } from "../../support/captured";
import {
  drawnAside,
  FOOT,
  LEG,
  middled,
  panelOf,
  placeIn,
  solved,
} from "../../support/drawn-aside";
import { type PanelName, push, walk, withPanel } from "../../support/walk";

const slides = (judged: Walk, yardstick: "trade" | "life" = "trade") =>
  reviewWalk(judged, yardstick).findings.filter(({ check }) => check === "slide");

const told = (findings: ReturnType<typeof slides>) =>
  findings.map(({ kind, side }) => `${kind} ${side}`);

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
