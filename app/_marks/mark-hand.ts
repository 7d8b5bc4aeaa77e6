import { JOINTS, type JointName, type Mark, markOf, type ViewMarks } from "../../lib/body";
import { distance, type Point } from "../../lib/geometry";
import type { Grip } from "./grip";
import { onPaper } from "./on-paper";

/** A mark on its way: shown where it is, not yet on the sheet. */
export interface HeldMark {
  readonly joint: JointName;
  readonly mark: Mark;
}

export interface MarkHandDeps {
  /** The marks of this view as they are on the sheet. */
  marks(): ViewMarks;
  /** CSS pixels across the paper, and panel units a pixel. */
  pixel(): number;
  /** How exactly a mark is placed now. Panel units, ±. */
  precision(): number;
  /** The joint that a tap on the paper places; null: none is left. */
  inHand(): JointName | null;
  show(held: HeldMark | null): void;
  /** Something is under way, from the first touch to the last. */
  begin(): void;
  end(): void;
  /** Puts a mark on the sheet: one step of undo. */
  place(joint: JointName, mark: Mark): void;
  /** A mark was tapped with nothing left to place: it goes into the hand, or out of it. */
  take(joint: JointName): void;
}

/** What a pointer or the arrow keys do to the marks of one paper. Points are in panel units. */
export interface MarkHand {
  /** False: there is nothing to do here. */
  down(at: Point, grip: Grip): boolean;
  move(at: Point): void;
  up(): void;
  nudge(joint: JointName, by: Point): void;
  /** Leaves a nudged mark where it is. */
  settle(): void;
  /** Leaves everything as it was. */
  cancel(): void;
  readonly busy: boolean;
}

interface Press {
  readonly start: Point;
  readonly grip: Grip;
  /** The mark under the pointer at first. */
  readonly under: HeldMark | null;
}

/**
 * A tap places, a drag moves. So a joint can be put where another's mark is already: from the side
 * one hip lies on the other.
 */
export function openMarkHand(deps: MarkHandDeps): MarkHand {
  let press: Press | null = null;
  let held: HeldMark | null = null;

  function hold(joint: JointName, at: Point): void {
    held = { joint, mark: { ...onPaper(at), precision: deps.precision() } };
    deps.show(held);
  }
  function letGo(): HeldMark | null {
    const was = held;
    const under = press !== null || held !== null;
    press = null;
    held = null;
    if (under) {
      deps.show(null);
      deps.end();
    }
    return was;
  }
  function put(): void {
    const was = held;
    if (was !== null) deps.place(was.joint, was.mark);
    letGo(); // only now: the review is taken up again with the mark in it
  }

  return {
    down(at, grip) {
      if (held !== null) put();
      const under = markUnder(deps.marks(), at, grip.reach * deps.pixel());
      const joint = deps.inHand();
      if (under === null && joint === null) return false;
      deps.begin();
      press = { start: at, grip, under };
      if (under === null && joint !== null) hold(joint, at);
      return true;
    },
    move(at) {
      if (press === null) return;
      const { start, grip, under } = press;
      if (under === null) {
        if (held !== null) hold(held.joint, at);
      } else if (held !== null || distance(start, at) > grip.slack * deps.pixel()) {
        hold(under.joint, { x: under.mark.x + at.x - start.x, y: under.mark.y + at.y - start.y });
      }
    },
    up() {
      if (press === null) return;
      const { start, under } = press;
      if (held === null && under !== null) {
        const joint = deps.inHand();
        if (joint === null || joint === under.joint) {
          letGo();
          deps.take(under.joint);
          return;
        }
        hold(joint, start);
      }
      put();
    },
    nudge(joint, by) {
      if (press !== null) return;
      if (held !== null && held.joint !== joint) put();
      const from = held?.mark ?? markOf(deps.marks(), joint);
      if (from === null) return;
      if (held === null) deps.begin();
      hold(joint, { x: from.x + by.x, y: from.y + by.y });
    },
    settle() {
      if (press === null && held !== null) put();
    },
    cancel() {
      letGo();
    },
    get busy() {
      return press !== null || held !== null;
    },
  };
}

/** The nearest mark within reach (panel units), if any. */
function markUnder(marks: ViewMarks, at: Point, reach: number): HeldMark | null {
  let nearest: HeldMark | null = null;
  let apart = reach;
  for (const joint of JOINTS) {
    const mark = markOf(marks, joint);
    const away = mark === null ? Number.POSITIVE_INFINITY : distance(at, mark);
    if (mark === null || away > apart) continue;
    nearest = { joint, mark };
    apart = away;
  }
  return nearest;
}
