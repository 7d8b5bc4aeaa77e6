import { describe, expect, it } from "vitest";
import { type Grip, gripOf, reachOf } from "../../../app/_marks/grip";
import { type HeldMark, openMarkHand } from "../../../app/_marks/mark-hand";
import { nudgeOf } from "../../../app/_marks/mark-keys";
import type { JointName, Mark, ViewMarks } from "../../../lib/body";
import type { Point } from "../../../lib/geometry";

const GRIP: Grip = { reach: 12, guess: 2.5, slack: 3 }; // px, and one unit a pixel below
const KNEE: ViewMarks = { "left-knee": { x: 300, y: 800, precision: 2 } };

/** A hand over a paper whose pixel is one panel unit, with everything it did written down. */
function bench(
  marks: ViewMarks = {},
  inHand: JointName | null = "left-heel",
  guess: Point | null = null,
) {
  const did: string[] = [];
  const placed: Record<string, Mark> = {};
  let shown: HeldMark | null = null;
  let painted: ViewMarks | null = null;
  const hand = openMarkHand({
    marks: () => marks,
    pixel: () => 1,
    precision: () => 4,
    inHand: () => inHand,
    guess: () => guess,
    landing: (_joint, at) => (Math.abs(at.y - 1080) < 10 ? { ...at, y: 1080 } : at),
    // Whatever is swapped goes along with its neighbour, so that a test can tell.
    dragged: ({ joint, to, swapped }) => {
      const mark = { ...to, precision: 4 };
      const along = swapped ? { "left-hip": mark } : {};
      return { side: { ...marks, ...along, [joint]: mark }, front: {} };
    },
    paint: (pose) => {
      painted = pose?.side ?? null;
    },
    put: ({ pose: { side } }) => {
      for (const [joint, mark] of Object.entries(side)) {
        if (mark === marks[joint as JointName]) continue;
        did.push(`place ${joint}`);
        placed[joint] = mark;
      }
    },
    show: (held) => {
      shown = held;
    },
    begin: () => did.push("begin"),
    end: () => did.push("end"),
    place: (joint, mark) => {
      did.push(`place ${joint}`);
      placed[joint] = mark;
    },
    take: (joint) => did.push(`take ${joint}`),
  });
  return { hand, did, placed, shown: () => shown, painted: () => painted };
}

describe("a pointer that marks", () => {
  it("places the joint in hand where the paper is tapped, in one step", () => {
    const { hand, did, placed, shown } = bench();
    hand.down({ x: 100, y: 200 }, GRIP);
    expect(shown()).toMatchObject({ joint: "left-heel" });
    hand.up();
    expect(did).toEqual(["begin", "place left-heel", "end"]);
    expect(placed["left-heel"]).toEqual({ x: 100, y: 200, precision: 4 });
    expect(shown()).toBeNull();
  });

  it("puts a new mark where the pointer is lifted", () => {
    const { hand, placed } = bench();
    hand.down({ x: 100, y: 200 }, GRIP);
    hand.move({ x: 120, y: 230 }, false);
    hand.move({ x: 140, y: 260 }, false);
    hand.up();
    expect(placed["left-heel"]).toMatchObject({ x: 140, y: 260 });
  });

  it("moves a mark it takes hold of, without a jump, in one step", () => {
    const { hand, did, placed } = bench(KNEE);
    hand.down({ x: 308, y: 800 }, GRIP);
    hand.move({ x: 318, y: 810 }, false);
    hand.move({ x: 328, y: 820 }, false);
    hand.up();
    expect(did).toEqual(["begin", "place left-knee", "end"]);
    expect(placed["left-knee"]).toMatchObject({ x: 320, y: 820 });
  });

  it("places the joint in hand on another's mark too: one hip lies on the other", () => {
    const { hand, placed } = bench(KNEE);
    hand.down({ x: 302, y: 800 }, GRIP);
    hand.move({ x: 303, y: 801 }, false); // a hand is never quite still
    hand.up();
    expect(placed).toEqual({ "left-heel": { x: 302, y: 800, precision: 4 } });
  });

  it.each([null, "left-knee"] as const)("takes the mark it taps with %s in hand", (inHand) => {
    const { hand, did } = bench(KNEE, inHand);
    hand.down({ x: 302, y: 800 }, GRIP);
    hand.up();
    expect(did).toEqual(["begin", "end", "take left-knee"]);
  });

  it.each([
    { x: 304, nearer: "left-knee" },
    { x: 306, nearer: "left-ankle" },
  ])("takes hold of the nearer of two marks, $nearer at $x", ({ x, nearer }) => {
    const { hand, placed } = bench({ ...KNEE, "left-ankle": { x: 310, y: 800, precision: 2 } });
    hand.down({ x, y: 800 }, GRIP);
    hand.move({ x, y: 900 }, false);
    hand.up();
    expect(Object.keys(placed)).toEqual([nearer]);
  });

  it("shows a mark on its way past the sheet, and nothing once it is put down", () => {
    const { hand, painted, shown } = bench(KNEE);
    hand.down({ x: 300, y: 800 }, GRIP);
    hand.move({ x: 340, y: 790 }, false);
    expect(painted()).toMatchObject({ "left-knee": { x: 340, y: 790 } });
    expect(shown()).toBeNull(); // React is not asked at every event
    hand.up();
    expect(painted()).toBeNull();
  });

  it("says at each event whether the other choice of what goes along is meant", () => {
    const { hand, did } = bench(KNEE);
    hand.down({ x: 300, y: 800 }, GRIP);
    hand.move({ x: 340, y: 790 }, false);
    hand.move({ x: 350, y: 790 }, true);
    hand.up();
    expect(did).toEqual(["begin", "place left-knee", "place left-hip", "end"]);
  });

  it("goes exactly to the guess that is tapped, and where it is tapped beside it", () => {
    const onIt = bench({}, "left-heel", { x: 100, y: 200 });
    onIt.hand.down({ x: 101, y: 202 }, GRIP);
    onIt.hand.up();
    expect(onIt.placed["left-heel"]).toEqual({ x: 100, y: 200, precision: 4 });
    const beside = bench({}, "left-heel", { x: 100, y: 200 });
    beside.hand.down({ x: 103, y: 202 }, GRIP);
    beside.hand.up();
    expect(beside.placed["left-heel"]).toEqual({ x: 103, y: 202, precision: 4 });
  });

  it("leaves the guess when a press on it is dragged away", () => {
    const { hand, placed } = bench({}, "left-heel", { x: 100, y: 200 });
    hand.down({ x: 100, y: 200 }, GRIP);
    hand.move({ x: 120, y: 200 }, false);
    hand.move({ x: 101, y: 200 }, false); // and back: the hand has decided
    hand.up();
    expect(placed["left-heel"]).toMatchObject({ x: 101, y: 200 });
  });

  it("lets a foot that is put down near the ground stand on it, while it is seen", () => {
    const { hand, shown, placed } = bench();
    hand.down({ x: 100, y: 1074 }, GRIP);
    expect(shown()).toMatchObject({ mark: { x: 100, y: 1080 } });
    hand.up();
    expect(placed["left-heel"]).toMatchObject({ x: 100, y: 1080 });
  });

  it("does nothing on bare paper when no joint is left to place", () => {
    const { hand, did } = bench(KNEE, null);
    expect(hand.down({ x: 100, y: 200 }, GRIP)).toBe(false);
    expect(did).toEqual([]);
    expect(hand.down({ x: 300, y: 800 }, GRIP)).toBe(true);
  });

  it("leaves everything as it was when it is called off", () => {
    const { hand, did, shown } = bench(KNEE);
    hand.down({ x: 300, y: 800 }, GRIP);
    hand.move({ x: 400, y: 700 }, false);
    hand.cancel();
    hand.move({ x: 410, y: 700 }, false);
    hand.up();
    expect(did).toEqual(["begin", "end"]);
    expect(shown()).toBeNull();
  });

  it("keeps a mark on the paper however far the pointer leaves it", () => {
    const { hand, placed } = bench();
    hand.down({ x: 100, y: 200 }, GRIP);
    hand.move({ x: -50, y: 1300 }, false);
    hand.up();
    expect(placed["left-heel"]).toMatchObject({ x: 0, y: 1200 });
  });
});

describe("arrow keys on a mark", () => {
  it("move it while held down, and place it once when let go", () => {
    const { hand, did, placed } = bench(KNEE);
    for (let repeat = 0; repeat < 5; repeat++) hand.nudge("left-knee", { x: 1, y: 0 });
    expect(did).toEqual(["begin"]);
    hand.settle();
    hand.settle();
    expect(did).toEqual(["begin", "place left-knee", "end"]);
    expect(placed["left-knee"]).toEqual({ x: 305, y: 800, precision: 4 });
  });

  it("take nothing from a mark that is not there", () => {
    const { hand, did } = bench(KNEE);
    hand.nudge("right-knee", { x: 1, y: 0 });
    hand.settle();
    expect(did).toEqual([]);
  });

  it("leave the mark where they brought it when another or the pointer goes on", () => {
    const { hand, did } = bench({ ...KNEE, head: { x: 350, y: 300, precision: 2 } });
    hand.nudge("left-knee", { x: 1, y: 0 });
    hand.nudge("head", { x: 0, y: 1 });
    hand.down({ x: 100, y: 200 }, GRIP);
    hand.up();
    expect(did.filter((deed) => deed.startsWith("place"))).toEqual([
      ...["place left-knee", "place head", "place left-heel"],
    ]);
    expect(did.filter((deed) => deed === "begin")).toHaveLength(3);
    expect(did.filter((deed) => deed === "end")).toHaveLength(3);
  });

  it("go 1 unit, with Shift 10, and leave the board's own combinations alone", () => {
    const bare = { shiftKey: false, altKey: false, ctrlKey: false, metaKey: false };
    expect(nudgeOf({ ...bare, key: "ArrowUp" })).toEqual({ x: 0, y: -1 });
    expect(nudgeOf({ ...bare, key: "ArrowRight", shiftKey: true })).toEqual({ x: 10, y: 0 });
    expect(nudgeOf({ ...bare, key: "ArrowRight", altKey: true })).toBeNull();
    expect(nudgeOf({ ...bare, key: "d" })).toBeNull();
  });
});

describe("the target around a mark", () => {
  it("is 24 px across at the desk, and small on the strip, where marks stand close", () => {
    expect(2 * reachOf(600)).toBe(24);
    expect(2 * reachOf(90)).toBeLessThan(12);
  });

  it("is wider for a finger, which also trembles more", () => {
    const [finger, mouse] = [gripOf(600, "touch"), gripOf(600, "mouse")];
    expect(finger.reach).toBeGreaterThan(mouse.reach);
    expect(finger.slack).toBeGreaterThan(mouse.slack);
    expect(gripOf(600, "pen")).toEqual(mouse);
  });
});
