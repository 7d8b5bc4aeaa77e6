import { isDeepStrictEqual } from "node:util";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { JOINTS, type JointName, type Mark, type ViewMarks } from "../../../lib/body";
import {
  type Against,
  KINDS,
  type Review,
  reviewWalk,
  type Walk,
  type WalkPanel,
  YARDSTICKS,
  type Yardstick,
} from "../../../lib/gait";
import { VIEWS } from "../../../lib/geometry";
import { POSES } from "../../../lib/motion";
import { type Dice, dice } from "../../support/dice";
import { push, raise, walk, withPanel } from "../../support/walk";

const EDITS = 20; // of one walk, one after the other
const RUNS = 2;
const SEED = Number(process.env.SEED ?? 24);

/** A walk on the board, and by what it is judged. */
interface Board {
  readonly walk: Walk;
  readonly yardstick: Yardstick;
  readonly against: Against;
}

type Edit = (board: Board, throws: Dice) => Board;

const inWalk = (change: (walk: Walk, throws: Dice) => Partial<Walk>): Edit => {
  return (board, throws) => ({
    ...board,
    walk: { ...board.walk, ...change(board.walk, throws) },
  });
};

const inPanel = (change: (panel: WalkPanel, throws: Dice) => Partial<WalkPanel>): Edit =>
  inWalk(({ panels }, throws) => {
    const one = throws.of(panels);
    const changed = { ...one, ...change(one, throws) };
    const next = panels.map((panel) => (panel === one ? changed : panel));
    return { panels: next.toSorted((a, b) => a.frame - b.frame) };
  });

const inMarks = (change: (marks: ViewMarks, joint: JointName, throws: Dice) => ViewMarks): Edit =>
  inPanel(({ marks }, throws) => {
    const view = throws.of(VIEWS);
    return { marks: { ...marks, [view]: change(marks[view], throws.of(JOINTS), throws) } };
  });

const about = (reach: number, throws: Dice) => throws.below(2 * reach + 1) - reach;

const marked: Edit = inMarks((marks, joint, throws) => {
  const at: Mark = marks[joint] ?? { x: 360, y: 700, precision: 2 };
  const reach = throws.of([1, 8, 60]);
  return {
    ...marks,
    [joint]: { ...at, x: at.x + about(reach, throws), y: at.y + about(reach, throws) },
  };
});

const unmarked: Edit = inMarks((marks, joint) => {
  const { [joint]: _, ...others } = marks;
  return others;
});

const EDITS_THERE_ARE: Readonly<Record<string, Edit>> = {
  marked,
  unmarked,
  moved: inPanel(({ frame }, throws) => ({ frame: Math.max(1, frame + about(3, throws)) })),
  labelled: inPanel((_, throws) => ({ pose: throws.of(POSES) })),
  weighed: inPanel((_, throws) => ({ weightOn: throws.of(["left", "right", null]) })),
  placed: inPanel((_, throws) => ({ place: throws.of([null, throws.below(300) / 100]) })),
  loaded: inWalk((_, throws) => ({ load: throws.of([0, 0.2]) })),
  kind: inWalk((_, throws) => ({ kind: throws.of(["plain", ...KINDS]) })),
  ground: inWalk((_, throws) => ({ ground: throws.of(["solved", "by-travel"]) })),
  travel: inWalk((_, throws) => ({ travel: throws.of(["on-the-spot", "travelling"]) })),
  pace: inWalk((_, throws) => ({
    advance: throws.of([0, 0.06, 0.07]),
    exposure: throws.of([1, 2]),
    framesPerSecond: throws.of([24, 25]),
  })),
  built: inWalk(({ build }, throws) => ({
    build: { ...build, statureMetres: throws.of([null, 1.7]) },
  })),
  removed: inWalk(({ panels }, throws) => {
    const one = throws.of(panels);
    return panels.length < 8 ? {} : { panels: panels.filter((panel) => panel !== one) };
  }),
  repeated: inWalk(({ panels }, throws) => {
    const one = throws.of(panels);
    const again = { ...one, id: `${one.id} ${throws.below(1e6)}`, frame: one.frame + 30 };
    return { panels: [...panels, again].toSorted((a, b) => a.frame - b.frame) };
  }),
  yardstick: (board, throws) => ({ ...board, yardstick: throws.of(YARDSTICKS) }),
  approved: (board, throws) => {
    const approved = board.walk.panels.slice(throws.below(8)).map(({ id }) => id);
    return { ...board, against: { ...board.against, approved } };
  },
  version: (board, throws) => {
    const version = { ...walk({ frames: { left: 12, right: 13 } }), load: throws.of([0, 0.1]) };
    return { ...board, against: { ...board.against, version } };
  },
};

/** Marks are what is edited most. */
function edit(board: Board, throws: Dice): readonly [what: string, Board] {
  const what = throws.of([...Array(12).fill("marked"), ...Object.keys(EDITS_THERE_ARE)]);
  return [what, EDITS_THERE_ARE[what]?.(board, throws) ?? board];
}

/** Back to how it was once: the very panels of then. */
function undo(before: readonly Board[], throws: Dice): readonly [what: string, Board] {
  return ["undone", throws.of(before)];
}

function review({ walk, yardstick, against }: Board): Review {
  return { ...reviewWalk(walk, yardstick, [], against) };
}

/** The same in objects that nobody has read yet. */
function unread({ walk, yardstick, against: { version, ...against } }: Board): Board {
  const ofOther = version === undefined ? {} : { version: structuredClone(version) };
  return { walk: structuredClone(walk), yardstick, against: { ...against, ...ofOther } };
}

function twoStrides(): Walk {
  const one = walk();
  const again = one.panels.slice(1, -1).map((panel) => ({
    ...panel,
    id: `${panel.id} again`,
    frame: panel.frame + 24,
  }));
  return { ...one, panels: [...one.panels.slice(0, -1), ...again] };
}

describe("a review that remembers the one before", () => {
  it("says of every edit what a review says that has read nothing before", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 1e6 }), (seed) => {
        const throws = dice(seed);
        let board: Board = { walk: twoStrides(), yardstick: throws.of(YARDSTICKS), against: {} };
        review(board);
        const before: Board[] = [board];
        for (let nth = 0; nth < EDITS; nth += 1) {
          const [what, next] = throws.below(6) === 0 ? undo(before, throws) : edit(board, throws);
          board = next;
          before.push(board);
          const [told, anew] = [review(board), review(unread(board))];
          if (!isDeepStrictEqual(told, anew)) expect(told, `${what}, edit ${nth}`).toEqual(anew);
        }
      }),
      { numRuns: RUNS, seed: SEED, endOnFailure: true },
    );
  });

  it("says the same of two walks that share their panels and are looked at by turns", () => {
    const one = twoStrides();
    const without = (at: number) => ({ ...one, panels: one.panels.toSpliced(at, 1) });
    const walks = [one, raise(one, "left passing", 0.05), without(4), without(1)];
    const boards = walks.flatMap((walk) =>
      YARDSTICKS.map((yardstick): Board => ({ walk, yardstick, against: {} })),
    );
    const anew = boards.map((board) => review(unread(board)));
    for (const round of [boards, boards.toReversed(), boards]) {
      for (const board of round) expect(review(board)).toEqual(anew[boards.indexOf(board)]);
    }
  });

  it("keeps the very remarks of panels and steps that nobody touched", () => {
    const before = twoStrides();
    const panels = before.panels.map((panel, at) =>
      at === 2 ? { ...panel, weightOn: null } : panel,
    );
    const first = reviewWalk(before, "trade");
    const second = reviewWalk({ ...before, panels }, "trade");
    const same = second.findings.filter((finding) => first.findings.includes(finding));
    expect(same.length).toBeGreaterThan(second.findings.length / 2);
  });
});

describe("a step of a limp, held against the first step on its own foot", () => {
  it("is told anew when the poses of that one change places", () => {
    const limp: Walk = { ...twoStrides(), kind: "limp" };
    const second = ({ findings }: Review) =>
      findings.filter(
        ({ check, panels }) =>
          check === "pose-order" &&
          panels.some((id) => id.startsWith("right") && id.endsWith("again")),
      );
    const before = second(reviewWalk(limp, "this-walk"));
    const early = withPanel(limp, "right up", { frame: 29 }); // before its passing
    const told = second(reviewWalk(early, "this-walk"));
    expect(before.map(({ kind }) => kind)).toEqual(["sound"]);
    expect(told).toMatchObject([{ kind: "remark", measured: { value: 2, unit: "poses" } }]);
    expect(told).toEqual(
      second(review(unread({ walk: early, yardstick: "this-walk", against: {} }))),
    );
  });
});

describe("an arc, held against the whole walk's median", () => {
  it("is told anew for a step when another step's marks change how fast the walk goes", () => {
    const thrown = push(walk(), "right passing", ["left-wrist"], 0.15);
    reviewWalk(thrown, "trade");
    for (const along of [-0.15, 0.15, 0.3, -0.3]) {
      const other = push(thrown, "left up", ["left-wrist"], along);
      const afresh = { ...other, panels: other.panels.map((panel) => ({ ...panel })) };
      const arcs = ({ remarks }: Review) => remarks.filter(({ check }) => check === "hitch");
      expect(arcs(reviewWalk(other, "trade"))).toEqual(arcs(reviewWalk(afresh, "trade")));
    }
  });
});

describe("what is told of a step beside others", () => {
  const poses = ["contact", "down", "passing", "up"] as const;
  const names = [
    ...poses.map((p) => `left ${p}` as const),
    ...poses.map((p) => `right ${p}` as const),
  ];

  it.each(names)("is told anew when the %s changes", (name) => {
    for (const legs of [0.06, -0.06]) {
      for (const change of [
        (from: Walk) => raise(from, name, legs),
        (from: Walk) => push(from, name, ["left-knee", "right-knee", "left-elbow"], 2 * legs),
      ]) {
        const before = raise(walk(), "right up", -0.03); // its remark names how the left step is
        reviewWalk(before, "trade");
        const after = change(before);
        const afresh = { ...after, panels: after.panels.map((panel) => ({ ...panel })) };
        expect(reviewWalk(after, "trade").findings).toEqual(reviewWalk(afresh, "trade").findings);
      }
    }
  });
});
