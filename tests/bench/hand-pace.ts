import type { Dice } from "../support/dice";
import type { ScreenPoint } from "../support/pen";

/**
 * Seconds that a hand takes for what is no aiming.
 * Source: Card, Moran & Newell (1980), The keystroke-level model, CACM 23:396: M, to think of what comes
 * next; K of an average typist who is no secretary; a button's press and release.
 */
const SECONDS = { look: 1.35, key: 0.28, press: 0.2 } as const;

/**
 * Bits a second of a pointing hand. MacKenzie (2015), Fitts' throughput and the remarkable case of
 * touch-based target selection: 6.95 for a finger, about 50 % more than the accepted values for a mouse. A
 * pen is taken to be no quicker than a mouse. That dragging is slower is known (MacKenzie, Sellen &
 * Buxton 1991); by how much here is our own choice.
 */
const THROUGHPUT = { point: 6.95 / 1.5, drag: (0.75 * 6.95) / 1.5 } as const;

/**
 * A hand that aims at a width hits it in 96 of 100 cases: its spread is the width over 4.133.
 * Source: Welford (1960), MacKenzie (1992), the effective target width
 */
const WIDTHS_A_SD = 4.133;

/** Keeps account of the time that a person's hand would have taken; nothing waits. */
export interface HandPace {
  look(): void;
  key(): void;
  /** A press where the hand has come to. */
  press(): void;
  /** Goes to a target so wide, CSS pixels. */
  point(to: ScreenPoint, width: number): void;
  drag(to: ScreenPoint, width: number): void;
  /** Where a hand comes down that aims at a target so wide. */
  landing(at: ScreenPoint, width: number): ScreenPoint;
  readonly seconds: number;
}

export function handPace(from: ScreenPoint, dice: Dice): HandPace {
  let seconds = 0;
  let at = from;
  const go = (to: ScreenPoint, width: number, bitsASecond: number) => {
    const bits = Math.log2(Math.hypot(to.x - at.x, to.y - at.y) / width + 1);
    seconds += bits / bitsASecond;
    at = to;
  };
  return {
    look() {
      seconds += SECONDS.look;
    },
    key() {
      seconds += SECONDS.key;
    },
    press() {
      seconds += SECONDS.press;
    },
    point: (to, width) => go(to, width, THROUGHPUT.point),
    drag: (to, width) => go(to, width, THROUGHPUT.drag),
    landing: ({ x, y }, width) => ({
      x: x + (normal(dice) * width) / WIDTHS_A_SD,
      y: y + (normal(dice) * width) / WIDTHS_A_SD,
    }),
    get seconds() {
      return seconds;
    },
  };
}

/** About the normal distribution of spread 1: the sum of twelve even throws, less six. */
function normal(dice: Dice): number {
  const throws = Array.from({ length: 12 }, () => dice.below(1_000_000) / 1_000_000);
  return throws.reduce((sum, one) => sum + one, -6);
}
