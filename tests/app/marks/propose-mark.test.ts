import { describe, expect, it } from "vitest";
import { coarsest } from "../../../app/_marks/mark-precision";
import { onPaper } from "../../../app/_marks/on-paper";
import { proposeMark } from "../../../app/_marks/propose-mark";
import { standingPlace } from "../../../app/_marks/standing-place";
import { JOINTS, LIMB_JOINTS, PANEL, type ViewMarks } from "../../../lib/body";
import { VIEWS } from "../../../lib/geometry";
import type { Panel } from "../../../lib/sheet";
import reference from "../../reference/standing-heights.json";

const panel = (id: string, frame: number, side: ViewMarks = {}): Panel => ({
  ...{ id, frame, hold: 0, pose: "contact", weightOn: null, place: null },
  marks: { side, front: {} },
  toRedraw: { side: false, front: false },
  ink: { side: [], front: [] },
  pictures: { side: null, front: null },
});
const knee = (x: number): ViewMarks => ({ "left-knee": { x, y: 850, precision: 2.1 } });

describe("where a mark is put without a pointer", () => {
  const here = panel("here", 7);

  it("is where the panel nearest in time has it", () => {
    const strip = [panel("far", 1, knee(100)), panel("near", 4, knee(200)), here];
    expect(proposeMark(strip, here, "side", "left-knee")).toMatchObject({ x: 200, y: 850 });
  });

  it("is where the earlier of two panels as near has it", () => {
    const strip = [panel("before", 4, knee(100)), here, panel("after", 10, knee(200))];
    expect(proposeMark(strip, here, "side", "left-knee").x).toBe(100);
  });

  it("passes over panels that have not marked the joint, and the other view", () => {
    const strip = [panel("far", 1, knee(100)), panel("near", 6), here];
    expect(proposeMark(strip, here, "side", "left-knee").x).toBe(100);
    const front = standingPlace("left-knee", "front");
    expect(proposeMark(strip, here, "front", "left-knee")).toMatchObject(onPaper(front));
  });

  it("never takes it from the panel itself, whose mark may have just been lifted", () => {
    const own = panel("here", 7, knee(100));
    const { x } = proposeMark([own], own, "side", "left-knee");
    expect(x).toBe(onPaper(standingPlace("left-knee", "side")).x);
  });

  it("carries the coarsest precision until it is looked at", () => {
    const strip = [panel("near", 4, knee(200)), here];
    expect(proposeMark(strip, here, "side", "left-knee").precision).toBe(coarsest(420));
  });

  it("stays on the paper when the neighbour's mark lies beyond it", () => {
    const strip = [panel("near", 4, knee(-40)), here];
    expect(proposeMark(strip, here, "side", "left-knee").x).toBe(0);
  });
});

describe("a plain figure that stands", () => {
  const stature = PANEL.plainLeg / reference.heights.hip;
  const heightOf = (y: number) => (PANEL.groundY - y) / stature;

  it.each(Object.entries(reference.heights))("has its %s at %d of its stature", (part, height) => {
    const joint = JOINTS.find((name) => name === `right-${part}`) ?? "head";
    for (const view of VIEWS)
      expect(heightOf(standingPlace(joint, view).y)).toBeCloseTo(height, 10);
  });

  it("has its neck's mark at the chin, its head's at the eye, its soles on the ground", () => {
    expect(heightOf(standingPlace("neck", "side").y)).toBeCloseTo(reference.chin, 10);
    expect(heightOf(standingPlace("head", "side").y)).toBeCloseTo(reference.eye, 10);
    for (const view of VIEWS) expect(standingPlace("left-toe", view).y).toBe(PANEL.groundY);
  });

  it("looks to the page's right from the side, on feet of the published length", () => {
    const length = standingPlace("left-toe", "side").x - standingPlace("left-heel", "side").x;
    expect(length / stature).toBeCloseTo(reference.foot, 10);
  });

  it("has its left on the page's right from ahead, as far apart as published", () => {
    const apart = (part: "hip" | "shoulder") =>
      (standingPlace(`left-${part}`, "front").x - standingPlace(`right-${part}`, "front").x) /
      stature;
    expect(apart("hip")).toBeCloseTo(reference.hipBreadth, 10);
    expect(apart("shoulder")).toBeCloseTo(reference.shoulderBreadth, 10);
  });

  it("puts no two joints of a view in one place, and all on the paper", () => {
    for (const view of VIEWS) {
      const places = JOINTS.map((joint) => standingPlace(joint, view));
      for (const place of places) expect(onPaper(place).x).toBeCloseTo(place.x, 0);
      expect(new Set(places.map(({ x, y }) => `${x} ${y}`)).size).toBe(JOINTS.length);
    }
    expect(LIMB_JOINTS.length * 2 + 3).toBe(JOINTS.length);
  });
});
