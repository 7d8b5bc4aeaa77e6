import { type Hand, isPalm } from "./hand";
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

const ERASER_BUTTON = 32; // in `buttons`: the other end of the pen, Pointer Events §10.1.3
const LEAST_PRESSURE = 0.02; // a pen that just touched may still say 0

interface Underway {
  readonly pointer: number;
  readonly gesture: Gesture;
  readonly pressureOf: (event: PointerEvent) => number;
  readonly box: PaperBox;
}

/**
 * Turns pointer events on a paper into gestures: a pen, a mouse's first button, or one finger. A
 * second finger ends the stroke unkept, so that two fingers move the paper; a palm beside a pen
 * does nothing. Whoever listens stops listening, which ends what is under way and keeps it.
 */
export function listenToPen(paper: HTMLElement, deps: PenDeps): () => void {
  let underway: Underway | null = null;

  function leave(how: "end" | "cancel"): void {
    const current = underway;
    if (current === null) return;
    underway = null;
    deps.hand.dropFinger = null;
    window.removeEventListener("pointerdown", watchFingers, true);
    if (paper.hasPointerCapture(current.pointer)) paper.releasePointerCapture(current.pointer);
    current.gesture[how]();
  }

  function watchFingers(event: PointerEvent): void {
    if (event.pointerType === "touch" && event.pointerId !== underway?.pointer) leave("cancel");
  }

  function down(event: PointerEvent): void {
    noticePen(event, deps.hand);
    const deed = event.buttons & ERASER_BUTTON ? rubInstead(deps.deed()) : deps.deed();
    if (underway !== null || deed === null || !mayDraw(event, deps.hand)) return;
    const { left, top, width } = paper.getBoundingClientRect();
    const box = { left, top, width };
    const pressureOf = event.pointerType === "pen" ? penPressure : steadyHand(event);
    const first = sampleOf(event, box, pressureOf);
    underway = { pointer: event.pointerId, gesture: deps.begin(deed, first), pressureOf, box };
    paper.setPointerCapture(event.pointerId);
    if (event.pointerType === "touch") {
      deps.hand.dropFinger = () => leave("cancel");
      window.addEventListener("pointerdown", watchFingers, true);
    }
  }

  function move(event: PointerEvent): void {
    noticePen(event, deps.hand);
    if (underway === null || event.pointerId !== underway.pointer) return;
    const { box, pressureOf, gesture } = underway;
    const coalesced = event.getCoalescedEvents();
    const events = coalesced.length === 0 ? [event] : coalesced;
    gesture.move(events.map((one) => sampleOf(one, box, pressureOf)));
  }

  function up(event: PointerEvent): void {
    if (event.pointerId === underway?.pointer) leave("end");
  }

  // A system that takes a finger away wants it for something else; a pen's line was meant.
  function lost(event: PointerEvent): void {
    if (event.pointerId !== underway?.pointer) return;
    leave(event.pointerType === "touch" && event.type === "pointercancel" ? "cancel" : "end");
  }

  paper.addEventListener("pointerdown", down);
  paper.addEventListener("pointermove", move);
  paper.addEventListener("pointerup", up);
  paper.addEventListener("pointercancel", lost);
  paper.addEventListener("lostpointercapture", lost);
  return () => {
    leave("end");
    paper.removeEventListener("pointerdown", down);
    paper.removeEventListener("pointermove", move);
    paper.removeEventListener("pointerup", up);
    paper.removeEventListener("pointercancel", lost);
    paper.removeEventListener("lostpointercapture", lost);
  };
}

function rubInstead(deed: Deed | null): Deed | null {
  return deed === null ? null : "rub-out";
}

/** A pen near the screen takes over from a finger that is drawing: that was the palm. */
function noticePen(event: PointerEvent, hand: Hand): void {
  if (event.pointerType !== "pen") return;
  hand.penSeenAt = event.timeStamp;
  hand.dropFinger?.();
}

function mayDraw(event: PointerEvent, hand: Hand): boolean {
  if (event.pointerType === "touch") {
    return event.isPrimary && hand.dropFinger === null && !isPalm(hand, event.timeStamp);
  }
  return event.button === 0 || (event.buttons & ERASER_BUTTON) !== 0;
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
