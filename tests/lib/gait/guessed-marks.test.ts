import { describe, expect, it } from "vitest";
import { type JointName, markOf, PANEL, type ViewMarks } from "../../../lib/body";
import {
  GUESS_PRECISION,
  type GuessedMarks,
  guessedMarks,
  placedFigure,
  snapToGround,
  type Walk,
} from "../../../lib/gait";
import { distance, median } from "../../../lib/geometry";
import captured from "../../reference/captured-strides.json";
import { capturedWalk } from "../../support/captured";
import { walk as builtWalk, unmark, withPanel } from "../../support/walk";

const QUICK = (["hip", "knee", "heel", "toe"] as const).flatMap((part): JointName[] => [
  `right-${part}`,
  `left-${part}`,
]);
const NOTHING = { side: {}, front: {} };

function guessOf(walk: Walk, id: string, yardstick: "trade" | "life" = "life"): GuessedMarks {
  const guess = guessedMarks(walk, id, yardstick);
  if (guess.kind === "cannot-tell") throw new Error(`needs ${guess.needs}`);
  return guess;
}

function mark(marks: ViewMarks, joint: JointName) {
  const found = markOf(marks, joint);
  if (found === null) throw new Error(`no ${joint}`);
  return found;
}

function without(walk: Walk, id: string): Walk {
  return {
    ...walk,
    panels: walk.panels.map((one) => (one.id === id ? { ...one, marks: NOTHING } : one)),
  };
}

/** How far guesses of the quick set are off, percent of a leg, each pose of each stride left out once. */
function errors(guess: (walk: Walk, id: string) => ViewMarks): number[] {
  return captured.walks.flatMap((one) => {
    const walk = capturedWalk(one);
    return walk.panels.flatMap((panel) => {
      const guessed = guess(without(walk, panel.id), panel.id);
      return QUICK.map(
        (joint) =>
          (100 * distance(mark(guessed, joint), mark(panel.marks.side, joint))) / PANEL.plainLeg,
      );
    });
  });
}

const ninth = (values: readonly number[]) =>
  values.toSorted((a, b) => a - b)[Math.floor(0.9 * values.length)] ?? Number.NaN;

describe("a captured pose that was left out", () => {
  const guessed = errors((walk, id) => guessOf(walk, id).marks.side);

  it("is guessed to 1.7 % of a leg, and nine marks in ten to 4.1 %", () => {
    expect(median(guessed)).toBeLessThan(1.8);
    expect(ninth(guessed)).toBeLessThan(4.3);
  });

  it("is guessed better than the published figure has it", () => {
    const placed = errors((walk, id) => {
      const figure = placedFigure(walk, id, "life");
      if (figure.kind === "cannot-tell") throw new Error(`needs ${figure.needs}`);
      return figure.marks.side;
    });
    expect(median(guessed)).toBeLessThan(0.7 * median(placed));
  });

  it("is guessed better still with its hips marked", () => {
    const hips: readonly JointName[] = ["left-hip", "right-hip"];
    const knees: readonly JointName[] = ["left-knee", "right-knee"];
    const off = (walk: Walk, id: string, marks: ViewMarks) => {
      const panel = walk.panels.find((one) => one.id === id);
      const guess = guessOf(walk, id).marks.side;
      if (panel === undefined) throw new Error("no panel");
      return knees.map((knee) => distance(mark(guess, knee), mark(marks, knee)));
    };
    const [blind, told] = [false, true].map((isTold) =>
      captured.walks.flatMap((one) => {
        const walk = capturedWalk(one);
        return walk.panels.flatMap(({ id, marks }) => {
          const own = Object.fromEntries(hips.map((hip) => [hip, mark(marks.side, hip)]));
          const bare = isTold ? { side: own, front: {} } : NOTHING;
          const panels = walk.panels.map((two) => (two.id === id ? { ...two, marks: bare } : two));
          return off({ ...walk, panels }, id, marks.side);
        });
      }),
    );
    expect(median(told ?? [])).toBeLessThan(median(blind ?? []));
  });
});

describe("a guess", () => {
  it("keeps what is marked on the panel, and says that the rest is coarse", () => {
    const walk = unmark(builtWalk(), "left passing", ["left-knee", "right-toe"]);
    const guess = guessOf(walk, "left passing", "trade");
    const own = walk.panels.find(({ id }) => id === "left passing")?.marks;
    expect(guess.from).toBe("poses");
    for (const [joint, drawn] of Object.entries(own?.side ?? {})) {
      expect(guess.marks.side[joint as JointName]).toEqual(drawn);
    }
    const coarse = GUESS_PRECISION * PANEL.plainLeg;
    expect(mark(guess.marks.side, "left-knee").precision).toBeCloseTo(coarse, 6);
    expect(mark(guess.marks.front, "right-toe").precision).toBeCloseTo(coarse, 6);
  });

  it("holds the planted foot where the pose before it put it down", () => {
    const walk = without(builtWalk(), "left passing");
    const down = walk.panels.find(({ id }) => id === "left down");
    const passing = walk.panels.find(({ id }) => id === "left passing");
    const guess = guessOf(walk, "left passing", "trade").marks.side;
    if (down === undefined || passing === undefined) throw new Error("no such poses");
    const slid = walk.advance * (passing.frame - down.frame) * PANEL.plainLeg;
    const heel = mark(guess, "left-heel");
    // Within 0.1 % of a leg: both poses beside it count, and each is rounded.
    expect(Math.abs(heel.x + slid - mark(down.marks.side, "left-heel").x)).toBeLessThan(0.42);
    expect(heel.y).toBe(PANEL.groundY);
    expect(mark(guess, "left-toe").y).toBe(PANEL.groundY);
  });

  it("bends its knees with the lengths that the stand has", () => {
    const walk = without(builtWalk(), "right down");
    const { side } = guessOf(walk, "right down", "trade").marks;
    const stand = walk.panels.find(({ pose }) => pose === "stand")?.marks.side ?? {};
    for (const leg of ["left", "right"] as const) {
      const long = (marks: ViewMarks) =>
        distance(mark(marks, `${leg}-hip`), mark(marks, `${leg}-knee`));
      expect(Math.abs(long(side) - long(stand))).toBeLessThan(0.005 * PANEL.plainLeg);
    }
  });

  it("has both views at one height, by the one that is marked", () => {
    const built = builtWalk();
    const panel = built.panels.find(({ id }) => id === "right up");
    if (panel === undefined) throw new Error("no such pose");
    const walk = withPanel(built, "right up", { marks: { ...panel.marks, front: {} } });
    const { front } = guessOf(walk, "right up", "trade").marks;
    for (const joint of QUICK) {
      expect(mark(front, joint).y).toBeCloseTo(mark(panel.marks.side, joint).y, 1);
    }
  });

  it("is the published figure where nothing is marked", () => {
    const blank = builtWalk();
    const walk = { ...blank, panels: blank.panels.map((one) => ({ ...one, marks: NOTHING })) };
    const guess = guessOf(walk, "left contact", "trade");
    const placed = placedFigure(walk, "left contact", "trade");
    expect(guess.from).toBe("figure");
    for (const joint of QUICK) {
      const figure = placed.kind === "figure" ? placed.marks.side : {};
      expect(distance(mark(guess.marks.side, joint), mark(figure, joint))).toBeLessThan(2.1);
    }
  });

  it("needs the side that carries, and a panel of the walk", () => {
    const walk = withPanel(builtWalk(), "left up", { weightOn: null });
    expect(guessedMarks(walk, "left up", "trade")).toMatchObject({ kind: "cannot-tell" });
    expect(() => guessedMarks(walk, "nowhere", "trade")).toThrow(/got nowhere/);
  });
});

describe("a mark near the ground line", () => {
  const near = { x: 300, y: PANEL.groundY - 9 };
  const snapped = (pose: "contact" | "passing" | "up" | "stand", joint: JointName) =>
    snapToGround(near, { pose, weightOn: pose === "stand" ? null : "left", joint }, 420).y;

  it.each([
    ["contact", "left-heel"],
    ["contact", "right-toe"],
    ["passing", "left-ball"],
    ["passing", "left-heel"],
    ["up", "left-toe"],
    ["stand", "right-heel"],
  ] as const)("is put on it at the %s, of the %s", (pose, joint) => {
    expect(snapped(pose, joint)).toBe(PANEL.groundY);
  });

  it.each([
    ["contact", "left-toe"],
    ["contact", "right-heel"],
    ["passing", "right-toe"],
    ["up", "left-heel"],
    ["passing", "left-ankle"],
    ["passing", "left-knee"],
  ] as const)("stays at the %s, of the %s", (pose, joint) => {
    expect(snapped(pose, joint)).toBe(near.y);
  });

  it("stays where it is farther than 3 % of a leg, over or under it", () => {
    const bearing = { pose: "passing", weightOn: "left", joint: "left-heel" } as const;
    for (const [off, isNear] of [
      [12.5, true],
      [-12.5, true],
      [12.7, false],
      [-12.7, false],
    ] as const) {
      const y = PANEL.groundY + off;
      expect(snapToGround({ x: 1, y }, bearing, 420).y).toBe(isNear ? PANEL.groundY : y);
    }
  });
});
