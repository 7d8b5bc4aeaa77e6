import {
  JOINTS,
  type JointName,
  type Mark,
  markOf,
  type PoseMarks,
  type ViewMarks,
} from "../../lib/body";
import { distance, type Point } from "../../lib/geometry";
import type { Grip } from "./grip";
import { onPaper } from "./on-paper";

/** A new mark on its way: shown where it is, not yet on the sheet. */
export interface HeldMark {
  readonly joint: JointName;
  readonly mark: Mark;
}

/** Where a mark that is there already is taken to. */
export interface Drag {
  readonly joint: JointName;
  readonly to: Point;
  /** The other of the two choices than the one that is set: the mark alone, or its whole figure. */
  readonly swapped: boolean;
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
  /** Where that joint is guessed to be, as shown on the paper; null: no guess is shown. */
  guess(): Point | null;
  /** Where a joint comes to lie that is put down here: a foot near the ground stands on it. */
  landing(joint: JointName, at: Point): Point;
  /** A new mark is shown by the paper's own drawing. */
  show(held: HeldMark | null): void;
  /** The pose once a mark is dragged: always from the pose on the sheet, so that no drag adds up. */
  dragged(drag: Drag): PoseMarks;
  /** The figure is shown so, in both views; null: as it is on the sheet. */
  paint(pose: PoseMarks | null): void;
  /** Something is under way, from the first touch to the last. */
  begin(): void;
  end(): void;
  /** Puts a new mark on the sheet: one step of undo. */
  place(joint: JointName, mark: Mark): void;
  /** Puts what was dragged on the sheet: one step of undo, whatever went along. */
  put(moved: Moved): void;
  /** A mark was tapped with nothing left to place: it goes into the hand, or out of it. */
  take(joint: JointName): void;
}

/** A pose that came of taking hold of one of its marks. */
export interface Moved {
  readonly joint: JointName;
  readonly pose: PoseMarks;
  readonly swapped: boolean;
}

/** What a pointer or the arrow keys do to the marks of one paper. Points are in panel units. */
export interface MarkHand {
  /** False: there is nothing to do here. */
  down(at: Point, grip: Grip): boolean;
  move(at: Point, swapped: boolean): void;
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
  /** It has gone further than a tap may. */
  gone: boolean;
}

interface Moving extends Moved {
  /** Where the keys have brought it; a pointer is its own measure. */
  readonly to: Point;
}

/**
 * A tap places, a drag moves. So a joint can be put where another's mark is already: from the side
 * one hip lies on the other.
 */
export function openMarkHand(deps: MarkHandDeps): MarkHand {
  let press: Press | null = null;
  let held: HeldMark | null = null;
  let moving: Moving | null = null;

  function hold(joint: JointName, at: Point): void {
    held = { joint, mark: { ...onPaper(deps.landing(joint, at)), precision: deps.precision() } };
    deps.show(held);
  }
  function drag(joint: JointName, at: Point, swapped: boolean): void {
    const to = onPaper(at);
    moving = { joint, to, swapped, pose: deps.dragged({ joint, to, swapped }) };
    deps.paint(moving.pose);
  }
  function letGo(): void {
    const under = press !== null || held !== null || moving !== null;
    const [shown, painted] = [held !== null, moving !== null];
    press = null;
    held = null;
    moving = null;
    if (!under) return;
    if (painted) deps.paint(null);
    if (shown) deps.show(null);
    deps.end();
  }
  function put(): void {
    if (held !== null) deps.place(held.joint, held.mark);
    if (moving !== null) deps.put(moving);
    letGo(); // only now: the review is taken up again with the marks in it
  }
  /** Tapped on its guess, a joint goes exactly there. */
  function takeGuess({ start, grip }: Press, joint: JointName): void {
    const guess = deps.guess();
    if (guess === null || distance(start, guess) > grip.guess * deps.pixel()) return;
    held = { joint, mark: { ...onPaper(guess), precision: deps.precision() } };
  }

  return {
    down(at, grip) {
      if (held !== null || moving !== null) put();
      const under = markUnder(deps.marks(), at, grip.reach * deps.pixel());
      const joint = deps.inHand();
      if (under === null && joint === null) return false;
      deps.begin();
      press = { start: at, grip, under, gone: false };
      if (under === null && joint !== null) hold(joint, at);
      return true;
    },
    move(at, swapped) {
      if (press === null) return;
      const { start, grip, under } = press;
      press.gone ||= distance(start, at) > grip.slack * deps.pixel();
      if (under === null) {
        if (held !== null) hold(held.joint, at);
      } else if (press.gone) {
        const way = { x: at.x - start.x, y: at.y - start.y };
        drag(under.joint, { x: under.mark.x + way.x, y: under.mark.y + way.y }, swapped);
      }
    },
    up() {
      if (press === null) return;
      const { start, under, gone } = press;
      if (moving === null && held === null && under !== null) {
        const joint = deps.inHand();
        if (joint === null || joint === under.joint) {
          letGo();
          deps.take(under.joint);
          return;
        }
        hold(joint, start);
      }
      if (held !== null && !gone) takeGuess(press, held.joint);
      put();
    },
    nudge(joint, by) {
      if (press !== null) return;
      if (moving !== null && moving.joint !== joint) put();
      const from = moving?.to ?? markOf(deps.marks(), joint);
      if (from === null) return;
      if (moving === null) deps.begin();
      drag(joint, { x: from.x + by.x, y: from.y + by.y }, false);
    },
    settle() {
      if (press === null && moving !== null) put();
    },
    cancel() {
      letGo();
    },
    get busy() {
      return press !== null || moving !== null;
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
