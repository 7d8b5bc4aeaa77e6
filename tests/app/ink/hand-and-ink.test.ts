import { describe, expect, it } from "vitest";
import { mayTell } from "../../../app/_ink/frame-pace";
import { handPressure, RESTING_PRESSURE } from "../../../app/_ink/hand-pressure";
import { isWorthKeeping } from "../../../app/_ink/keep-point";
import { nextZ } from "../../../app/_ink/next-z";
import { onionNeighbours } from "../../../app/_ink/onion-neighbours";
import { beginRubbing } from "../../../app/_ink/rubbing";
import type { InkStroke, Panel } from "../../../lib/sheet";

describe("a mouse's pressure", () => {
  it("rests where the hand rests", () => {
    expect(handPressure(RESTING_PRESSURE, 0, 16)).toBeCloseTo(RESTING_PRESSURE, 10);
  });
  it("grows lighter with speed, gently and not for ever", () => {
    let pressure = RESTING_PRESSURE;
    for (let event = 0; event < 60; event++) {
      const next = handPressure(pressure, 80, 16); // 5 px a millisecond: a hand's quickest
      expect(pressure - next).toBeLessThan(0.05);
      expect(next).toBeLessThanOrEqual(pressure);
      pressure = next;
    }
    expect(pressure).toBeGreaterThan(0.3);
    expect(pressure).toBeLessThan(0.34);
  });
});

describe("the order of drawing", () => {
  it("lays each pencil stroke above the last, and under-drawing beneath them all", () => {
    const ink: Pick<InkStroke, "nib" | "z">[] = [];
    for (const nib of ["fine", "under", "broad", "under", "fine"] as const) {
      ink.push({ nib, z: nextZ(ink, nib) });
    }
    const drawn = ink.toSorted((a, b) => a.z - b.z).map(({ nib }) => nib);
    expect(drawn).toEqual(["under", "under", "fine", "broad", "fine"]);
    expect(new Set(ink.map(({ z }) => z)).size).toBe(5);
  });
});

describe("a point worth keeping", () => {
  it("moved, or was pressed otherwise; noise is neither", () => {
    expect(isWorthKeeping([0, 0, 0.5], [0.2, 0, 0.5], 1)).toBe(false);
    expect(isWorthKeeping([0, 0, 0.5], [0.4, 0, 0.5], 1)).toBe(true);
    expect(isWorthKeeping([0, 0, 0.5], [0, 0, 0.6], 1)).toBe(true);
    expect(isWorthKeeping([0, 0, 0.5], [0.4, 0, 0.5], 7)).toBe(false); // a small paper
  });
});

describe("the pace of telling", () => {
  it("is 60 a second at most, on any screen", () => {
    const told = (framesPerSecond: number) => {
      let last = Number.NEGATIVE_INFINITY;
      let count = 0;
      for (let frame = 0; frame < framesPerSecond; frame++) {
        const now = (frame * 1000) / framesPerSecond;
        if (!mayTell(last, now)) continue;
        last = now;
        count++;
      }
      return count;
    };
    expect([told(60), told(120), told(144)]).toEqual([60, 60, 48]);
  });
});

describe("rubbing out", () => {
  const line = (id: string, y: number): InkStroke => ({
    ...{ id, panel: "p", view: "side", nib: "fine", colour: "graphite", width: 4, z: 1 },
    points: [
      [100, y, 0.5],
      [200, y, 0.5],
    ],
  });
  it("gathers every stroke its way crosses, each once", () => {
    const ink = [line("a", 100), line("b", 200), line("c", 300)];
    const rubbing = beginRubbing({ x: 150, y: 50, pressure: 1 }, 5);
    expect(rubbing.move(ink, [{ x: 150, y: 90, pressure: 1 }])).toBe(false);
    // A quick hand leaves no sample on the lines it crosses.
    expect(rubbing.move(ink, [{ x: 150, y: 250, pressure: 1 }])).toBe(true);
    expect(rubbing.move(ink, [{ x: 150, y: 150, pressure: 1 }])).toBe(false);
    expect([...rubbing.crossed]).toEqual(["a", "b"]);
  });
});

describe("onion skin", () => {
  const panels = ["a", "b", "c", "d"].map(
    (id): Panel => ({
      ...{ id, frame: 1, hold: 0, pose: "contact", weightOn: null, place: null },
      marks: { side: {}, front: {} },
      toRedraw: { side: false, front: false },
      ink: { side: [], front: [] },
      pictures: { side: null, front: null },
    }),
  );
  const seen = (id: string, before: number, after: number) =>
    onionNeighbours({ panels }, id, { before, after }).map((one) => `${one.when} ${one.panel.id}`);

  it("shows the far ones first, so that the near ones lie over them", () => {
    expect(seen("c", 2, 1)).toEqual(["before a", "after d", "before b"]);
  });
  it("ends at the ends of the strip", () => {
    expect(seen("a", 1, 1)).toEqual(["after b"]);
    expect(seen("d", 0, 2)).toEqual([]);
    expect(seen("gone", 1, 1)).toEqual([]);
  });
});
