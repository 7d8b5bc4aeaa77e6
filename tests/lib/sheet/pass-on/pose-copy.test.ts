import { describe, expect, it } from "vitest";
import { distance } from "../../../../lib/geometry";
import { poseCopy, poseMirror } from "../../../../lib/sheet";
import { LEG, mark, panelAt, passed } from "../../../support/captured-panels";
import { strokeOf } from "../../../support/strokes";

describe("a pose passed on", () => {
  const from = panelAt("contact", "left");
  const to = panelAt("contact", "right");

  it("is the same pose in both views, precision too", () => {
    expect(passed(to, poseCopy(from, to, false))).toEqual(from.marks);
  });

  it("leaves a view that is not marked there", () => {
    const half = { ...from, marks: { ...from.marks, front: {} } };
    const now = passed(to, poseCopy(half, to, false));
    expect(now.side).toEqual(from.marks.side);
    expect(now.front).toEqual(to.marks.front);
  });

  it("lifts marks that the pose does not have", () => {
    const few = { ...from, marks: { side: { head: mark(from.marks.side, "head") }, front: {} } };
    expect(passed(to, poseCopy(few, to, false)).side).toEqual(few.marks.side);
  });

  it("takes the ink along as it is, and turns it from ahead when mirrored", () => {
    const ink = (view: "side" | "front") => [
      { id: "inkinkin", ...strokeOf([[100, 7, 0.5]], { view, panel: from.id }) },
    ];
    const drawn = { ...from, ink: { side: ink("side"), front: ink("front") } };
    const copied = poseCopy(drawn, to, true);
    const mirrored = poseMirror(drawn, to, true);
    if (copied.kind !== "passing" || mirrored.kind !== "passing") throw new Error();
    expect(copied.ink.map(({ view, points }) => [view, points])).toEqual([
      ["side", [[100, 7, 0.5]]],
      ["front", [[100, 7, 0.5]]],
    ]);
    expect(mirrored.ink.map(({ view, points }) => [view, points])).toEqual([
      ["side", [[100, 7, 0.5]]],
      ["front", [[620, 7, 0.5]]],
    ]);
    for (const stroke of [...copied.ink, ...mirrored.ink]) expect(stroke.panel).toBe(to.id);
  });

  it("answers what it needs, and refuses the panel itself", () => {
    const bare = { ...from, marks: { side: {}, front: {} } };
    expect(poseCopy(bare, to, false)).toEqual({ kind: "cannot-tell", needs: "marks to copy" });
    expect(poseCopy(bare, to, true)).toMatchObject({ needs: "marks or ink to copy" });
    expect(poseCopy(from, from, false)).toMatchObject({ kind: "cannot" });
    expect(poseCopy(from, { ...from, id: "another1" }, false)).toMatchObject({ kind: "cannot" });
  });
});

describe("a pose mirrored to the other step", () => {
  const from = panelAt("contact", "left");
  const to = panelAt("contact", "right");
  const now = passed(to, poseMirror(from, to, false));

  it("has the other foot ahead, on the same side of the page", () => {
    expect(mark(from.marks.side, "left-toe").x).toBeGreaterThan(
      mark(from.marks.side, "right-toe").x,
    );
    expect(mark(now.side, "right-toe").x).toBe(mark(from.marks.side, "left-toe").x);
    expect(mark(now.side, "left-toe").x).toBe(mark(from.marks.side, "right-toe").x);
  });

  it("keeps the walker's left on the page's right from ahead", () => {
    expect(mark(now.front, "left-hip").x).toBeGreaterThan(mark(now.front, "right-hip").x);
    expect(mark(now.front, "left-hip").x).toBeCloseTo(
      720 - mark(from.marks.front, "right-hip").x,
      9,
    );
  });

  it("lies close to the captured other step, as a walk's two steps do", () => {
    // The person's own asymmetry and where the panel's middle was put; far less than a wrong side is.
    for (const joint of ["left-knee", "right-knee", "left-hip"] as const) {
      expect(distance(mark(now.side, joint), mark(to.marks.side, joint))).toBeLessThan(0.12 * LEG);
    }
  });

  it("keeps the panel's own load", () => {
    const load = { x: 1, y: 2, precision: 3 };
    const laden = { ...to, marks: { ...to.marks, side: { ...to.marks.side, load } } };
    expect(passed(laden, poseMirror(from, laden, false)).side.load).toEqual(load);
  });
});
