import { describe, expect, it } from "vitest";
import { placeOf, reviewWalk, type Walk } from "../../../lib/gait";
import { walk } from "../../support/walk";

/** The built walk as somebody placed it by hand, each panel where the ground is under it. */
const placed = (from: Walk, astray = 0): Walk => ({
  ...from,
  travel: "travelling",
  panels: from.panels.map((panel, index) => ({
    ...panel,
    place: from.advance * (panel.frame - 1) + astray * index,
  })),
});

describe("the place of a panel", () => {
  it("is the one set by hand in a walk that travels, else follows the advance", () => {
    const panel = { frame: 5, place: 7 };
    expect(placeOf(panel, { travel: "travelling", advance: 0.1, panels: [] })).toBe(7);
    expect(
      placeOf({ ...panel, place: null }, { travel: "travelling", advance: 0.1, panels: [] }),
    ).toBe(0.4);
    expect(placeOf(panel, { travel: "on-the-spot", advance: 0.1, panels: [] })).toBe(0.4);
  });

  it("no longer counts once a walk that travelled goes on the spot", () => {
    const astray = placed(walk(), 0.2);
    const slides = (judged: Walk) =>
      reviewWalk(judged, "trade").remarks.filter(({ check }) => check === "slide");
    expect(slides(astray).length).toBeGreaterThan(0);
    const onTheSpot: Walk = { ...astray, travel: "on-the-spot" };
    expect(slides(onTheSpot)).toEqual([]);
    expect(reviewWalk(onTheSpot, "trade").stepReadings).toEqual(
      reviewWalk(walk(), "trade").stepReadings,
    );
  });

  it("reads the same ground either way where the places are the advance's own", () => {
    expect(reviewWalk(placed(walk()), "trade").findings).toEqual(
      reviewWalk(walk(), "trade").findings,
    );
  });
});
