import { followPointer, type Hand, isEraser, passedBy } from "../_paper";
import { handPressure, RESTING_PRESSURE } from "./hand-pressure";
import { type PaperBox, type PenSample, toPaper } from "./pen-sample";

/** What a pointer does from down to up. */
export interface Gesture {
  move(samples: readonly PenSample[]): void;
  end(): void;
  cancel(): void;
}

export type Deed = "draw" | "rub-out";

export interface PenDeps {
  readonly hand: Hand;
  /** What the tool in hand does to the paper; null: nothing. */
  deed(): Deed | null;
  begin(deed: Deed, first: PenSample): Gesture;
}

const LEAST_PRESSURE = 0.02; // a pen that just touched may still say 0

/**
 * Turns what a pointer does on a paper into gestures, with pressure; a pen's other end rubs out. A
 * line that the pen is taken away from was meant, and so was the one under way when listening stops.
 */
export function listenToPen(paper: HTMLElement, { hand, deed, begin }: PenDeps): () => void {
  return followPointer(paper, {
    hand,
    takesEraser: true,
    keepsWhenLost: true,
    begin(event) {
      const asked = deed();
      if (asked === null) return null;
      const { left, top, width } = paper.getBoundingClientRect();
      const box = { left, top, width };
      const pressureOf = event.pointerType === "pen" ? penPressure : steadyHand(event);
      const first = sampleOf(event, box, pressureOf);
      const gesture = begin(isEraser(event) ? "rub-out" : asked, first);
      return {
        move: (moved) => gesture.move(passedBy(moved).map((one) => sampleOf(one, box, pressureOf))),
        end: () => gesture.end(),
        cancel: () => gesture.cancel(),
      };
    },
  });
}

function sampleOf(
  event: PointerEvent,
  box: PaperBox,
  pressureOf: (event: PointerEvent) => number,
): PenSample {
  return { ...toPaper(event.clientX, event.clientY, box), pressure: pressureOf(event) };
}

const penPressure = (event: PointerEvent) => Math.max(LEAST_PRESSURE, event.pressure);

/** A mouse and most fingers press alike all the time: their pressure comes from their speed. */
function steadyHand(first: PointerEvent): (event: PointerEvent) => number {
  let pressure = RESTING_PRESSURE;
  let last = { x: first.clientX, y: first.clientY, at: first.timeStamp };
  return ({ clientX: x, clientY: y, timeStamp: at }) => {
    if (at > last.at) {
      pressure = handPressure(pressure, Math.hypot(x - last.x, y - last.y), at - last.at);
      last = { x, y, at };
    }
    return pressure;
  };
}
