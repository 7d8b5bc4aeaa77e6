import { describe, expect, it } from "vitest";
import {
  type JointName,
  limbJoint,
  markOf,
  PANEL,
  SIDES,
  type Side,
  sideToGround,
  type ViewMarks,
} from "../../../lib/body";
import { reviewWalk, walkLegLength } from "../../../lib/gait";
import { distance } from "../../../lib/geometry";
import {
  bodyShift,
  capturedExample,
  footCopy,
  footOnPrint,
  marksAfter,
  type Panel,
  type PassOn,
  poseCopy,
  poseMirror,
  type Sheet,
  walkOf,
} from "../../../lib/sheet";
import { ids } from "../../support/peers";
import { strokeOf } from "../../support/strokes";

const LEG = PANEL.plainLeg;
const HALF_PERCENT = 0.005 * LEG; // 0.5 % of a leg, panel units

const sheet = capturedExample(ids());
const panelAt = (pose: Panel["pose"], weightOn: Side, from = sheet): Panel => {
  const panel = from.panels.find((one) => one.pose === pose && one.weightOn === weightOn);
  if (panel === undefined) throw new RangeError(`no ${weightOn} ${pose}`);
  return panel;
};
const passed = (panel: Panel, given: PassOn) => {
  if (given.kind !== "passing") throw new Error(JSON.stringify(given));
  return marksAfter(panel.marks, given.marks);
};
const mark = (marks: ViewMarks, joint: JointName) => {
  const found = markOf(marks, joint);
  if (found === null) throw new RangeError(`no ${joint}`);
  return found;
};
const bone = (marks: ViewMarks, from: JointName, to: JointName) =>
  distance(mark(marks, from), mark(marks, to));

/** Every thigh and shank as long as it was, and the knee on the side it was. */
function expectLegsKept(before: ViewMarks, now: ViewMarks) {
  for (const side of SIDES) {
    const [hip, knee, ankle] = (["hip", "knee", "ankle"] as const).map((j) => limbJoint(side, j));
    if (hip === undefined || knee === undefined || ankle === undefined) throw new Error();
    for (const [from, to] of [
      [hip, knee],
      [knee, ankle],
    ] as const) {
      expect(Math.abs(bone(now, from, to) - bone(before, from, to))).toBeLessThan(HALF_PERCENT);
    }
    const ahead = (marks: ViewMarks) => {
      const [h, k, a] = [mark(marks, hip), mark(marks, knee), mark(marks, ankle)];
      return (a.x - h.x) * (k.y - h.y) - (a.y - h.y) * (k.x - h.x);
    };
    // A knee drawn straight may turn out bent: forward, as knees do.
    if (Math.abs(ahead(before)) > 2000)
      expect(Math.sign(ahead(now))).toBe(Math.sign(ahead(before)));
  }
}

const FEET: readonly JointName[] = SIDES.flatMap((side) =>
  (["ankle", "heel", "ball", "toe"] as const).map((part) => limbJoint(side, part)),
);

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

describe("a foot passed on", () => {
  const from = panelAt("down", "left");
  const to = panelAt("passing", "left");
  const foot = FEET.filter((joint) => joint.startsWith("left-"));

  it("moves the foot and solves the knee, and nothing else", () => {
    const now = passed(to, footCopy(from, to, { side: "left", ink: false }));
    for (const joint of foot) {
      expect(now.side[joint]).toEqual(from.marks.side[joint]);
      expect(now.front[joint]).toEqual(from.marks.front[joint]);
    }
    expectLegsKept(to.marks.side, now.side);
    const others = Object.keys(to.marks.side).filter(
      (joint) => !foot.includes(joint as JointName) && joint !== "left-knee",
    ) as JointName[];
    for (const joint of others) {
      expect(now.side[joint]).toEqual(to.marks.side[joint]);
      expect(now.front[joint]).toEqual(to.marks.front[joint]);
    }
  });

  it("takes only the ink round the foot along, cut out of longer lines", () => {
    const ankle = mark(from.marks.side, "left-ankle");
    const legLine = strokeOf(
      [
        [ankle.x, ankle.y - 300, 1],
        [ankle.x, ankle.y, 1],
      ],
      { panel: from.id },
    );
    const headLine = strokeOf(
      [
        [300, 100, 1],
        [400, 100, 1],
      ],
      { panel: from.id },
    );
    const ink = {
      side: [
        { id: "legleg11", ...legLine },
        { id: "headhead", ...headLine },
      ],
      front: [],
    };
    const given = footCopy({ ...from, ink }, to, { side: "left", ink: true });
    if (given.kind !== "passing") throw new Error();
    expect(given.ink.length).toBe(1);
    const [piece] = given.ink;
    expect(piece?.panel).toBe(to.id);
    const heights = piece?.points.map(([, y]) => ankle.y - y) ?? [];
    expect(Math.max(...heights)).toBeLessThan(0.1 * LEG);
    expect(Math.min(...heights)).toBe(0);
  });

  it("answers what it needs", () => {
    const bare = { ...from, marks: { side: {}, front: {} } };
    expect(footCopy(bare, to, { side: "right", ink: true })).toEqual({
      kind: "cannot-tell",
      needs: "the right foot marked there",
    });
  });
});

/** The sheet with one panel's foot slid along the ground, its knee left where it was. */
function slid(panel: Panel, side: Side, units: number): Sheet {
  const foot = FEET.filter((joint) => joint.startsWith(side));
  const moved = Object.fromEntries(
    foot.map((joint) => {
      const { x, ...rest } = mark(panel.marks.side, joint);
      return [joint, { ...rest, x: x + units }];
    }),
  );
  const marks = { ...panel.marks, side: { ...panel.marks.side, ...moved } };
  return {
    ...sheet,
    panels: sheet.panels.map((one) => (one === panel ? { ...panel, marks } : one)),
  };
}

describe("a foot put on its footprint", () => {
  const leg = walkLegLength(walkOf(sheet));
  const legLength = leg.kind === "value" ? leg.value : Number.NaN;
  const groundX = (from: Sheet, panel: Panel, joint: JointName) => {
    const place = panel.place ?? from.head.advance * (panel.frame - 1);
    return sideToGround(mark(panel.marks.side, joint), { place, legLength }).x;
  };

  it.each(["left", "right"] as const)("ends the %s foot's slide, the knee solved", (side) => {
    const passing = panelAt("passing", side);
    const slipped = slid(passing, side, -0.1 * LEG);
    const slides = (from: Sheet) =>
      reviewWalk(walkOf(from), "life").remarks.filter((one) => one.check === "slide");
    expect(slides(slipped).map((one) => one.side)).toEqual([side]);

    const panel = panelAt("passing", side, slipped);
    const now = passed(panel, footOnPrint(slipped, panel.id, side));
    const mended: Sheet = {
      ...slipped,
      panels: slipped.panels.map((one) => (one === panel ? { ...panel, marks: now } : one)),
    };
    expect(slides(mended)).toEqual([]);
    const down = panelAt("down", side, mended);
    const ball = limbJoint(side, "ball");
    expect(groundX(mended, panelAt("passing", side, mended), ball)).toBeCloseTo(
      groundX(mended, down, ball),
      3, // marks are kept to a hundredth of a unit, 0.00002 of a leg
    );
    expectLegsKept(panel.marks.side, now.side);
    expect(now.side[limbJoint(side, "hip")]).toEqual(panel.marks.side[limbJoint(side, "hip")]);
  });

  it("goes by the heel on the down, which rolls over it", () => {
    const down = panelAt("down", "left");
    const slipped = slid(down, "left", 0.05 * LEG);
    const panel = panelAt("down", "left", slipped);
    const now = passed(panel, footOnPrint(slipped, panel.id, "left"));
    const mended = { ...panel, marks: now };
    expect(groundX(slipped, mended, "left-heel")).toBeCloseTo(
      groundX(slipped, panelAt("contact", "left", slipped), "left-heel"),
      3,
    );
  });

  it("says why not: put down here, in the air, or out of reach", () => {
    const why = (from: Sheet, panel: Panel, side: Side) => {
      const given = footOnPrint(from, panel.id, side);
      return given.kind === "cannot" ? given.why : given.kind;
    };
    expect(why(sheet, panelAt("contact", "left"), "left")).toMatch(/this is its footprint/);
    expect(why(sheet, panelAt("passing", "left"), "right")).toMatch(/not told to be planted/);
    const far = slid(panelAt("down", "left"), "left", 0.9 * LEG);
    expect(why(far, panelAt("passing", "left", far), "left")).toMatch(
      /the left leg would have to be [\d.]+ % of a leg longer/,
    );
  });
});

describe("a body shifted", () => {
  const STILL = { forward: 0, up: 0, aside: 0 };

  it("lowers hips and all above, the feet kept and the legs as long as they were", () => {
    for (const panel of sheet.panels) {
      const now = passed(panel, bodyShift(panel, { ...STILL, up: -0.04 * LEG }));
      for (const joint of FEET) {
        expect(now.side[joint]).toEqual(panel.marks.side[joint]);
        expect(now.front[joint]).toEqual(panel.marks.front[joint]);
      }
      for (const joint of ["head", "left-hip", "right-wrist"] as const) {
        for (const view of ["side", "front"] as const) {
          const was = panel.marks[view][joint];
          if (was === undefined) continue;
          expect(mark(now[view], joint).y).toBeCloseTo(was.y + 0.04 * LEG, 0);
          expect(mark(now[view], joint).x).toBeCloseTo(was.x, 0);
        }
      }
      expectLegsKept(panel.marks.side, now.side);
    }
  });

  it("has the front view's knees at the side view's heights", () => {
    const panel = panelAt("passing", "left");
    const now = passed(panel, bodyShift(panel, { ...STILL, up: -0.05 * LEG }));
    for (const side of SIDES) {
      const knee = limbJoint(side, "knee");
      expect(mark(now.front, knee).y).toBeCloseTo(mark(now.side, knee).y, 0);
    }
  });

  it("shifts the hips aside from ahead, and knees by their share of the leg", () => {
    const panel = panelAt("passing", "left");
    const now = passed(panel, bodyShift(panel, { ...STILL, aside: 40 }));
    expect(now.side).toEqual(panel.marks.side);
    expect(mark(now.front, "left-hip").x).toBeCloseTo(
      mark(panel.marks.front, "left-hip").x + 40,
      0,
    );
    const knee = mark(now.front, "left-knee").x - mark(panel.marks.front, "left-knee").x;
    expect(knee).toBeGreaterThan(15);
    expect(knee).toBeLessThan(30);
  });

  it("does not stretch a leg: it says by how much it would have to be longer", () => {
    const given = bodyShift(panelAt("contact", "left"), { ...STILL, up: 0.2 * LEG });
    expect(given.kind === "cannot" ? given.why : "").toMatch(/would have to be [\d.]+ % of a leg/);
  });

  it("needs hips", () => {
    const panel = { ...panelAt("up", "left"), marks: { side: {}, front: {} } };
    expect(bodyShift(panel, { ...STILL, up: 5 })).toEqual({
      kind: "cannot-tell",
      needs: "the hips marked",
    });
  });
});
