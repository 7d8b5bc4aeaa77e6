import { type Hand, isPalm } from "./hand";

/** What is done with a pointer from down to up. */
export interface Followed {
  move(event: PointerEvent): void;
  end(): void;
  /** Everything is as it was before the pointer came down. */
  cancel(): void;
}

export interface PointerDeps {
  readonly hand: Hand;
  /** The other end of a pen counts, too. */
  readonly takesEraser?: boolean;
  /** What a lost pen or mouse did so far is kept, instead of left. */
  readonly keepsWhenLost?: boolean;
  /** A pointer comes down; null: it means nothing here. */
  begin(event: PointerEvent): Followed | null;
}

const ERASER_BUTTON = 32; // in `buttons`: the other end of the pen, Pointer Events §10.1.3

export function isEraser({ buttons }: Pick<PointerEvent, "buttons">): boolean {
  return (buttons & ERASER_BUTTON) !== 0;
}

interface Underway {
  readonly pointer: number;
  readonly finger: boolean;
  readonly followed: Followed;
}

/**
 * Follows pointers on an element: a pen, a mouse's first button, or one finger. A second finger,
 * wherever it lands, cancels what the first does, so that two move the paper; so does a pen that
 * comes near, for then the finger was the palm. A palm beside a pen does nothing.
 *
 * @returns stops following, which ends what is under way as if the pointer were lost
 */
export function followPointer(element: HTMLElement, deps: PointerDeps): () => void {
  const { hand, keepsWhenLost = false } = deps;
  let underway: Underway | null = null;

  function leave(how: "end" | "cancel"): void {
    const current = underway;
    if (current === null) return;
    underway = null;
    if (current.finger) hand.dropFinger = null;
    window.removeEventListener("pointerdown", watchFingers, true);
    if (element.hasPointerCapture(current.pointer)) element.releasePointerCapture(current.pointer);
    current.followed[how]();
  }

  function watchFingers(event: PointerEvent): void {
    if (event.pointerType === "touch" && event.pointerId !== underway?.pointer) leave("cancel");
  }

  function down(event: PointerEvent): void {
    noticePen(event, hand);
    if (underway !== null || !counts(event, deps)) return;
    const followed = deps.begin(event);
    if (followed === null) return;
    const finger = event.pointerType === "touch";
    underway = { pointer: event.pointerId, finger, followed };
    element.setPointerCapture(event.pointerId);
    if (!finger) return;
    hand.dropFinger = () => leave("cancel");
    window.addEventListener("pointerdown", watchFingers, true);
  }

  function move(event: PointerEvent): void {
    noticePen(event, hand);
    if (event.pointerId === underway?.pointer) underway.followed.move(event);
  }

  function up(event: PointerEvent): void {
    if (event.pointerId === underway?.pointer) leave("end");
  }

  // A system that takes a finger away wants it for something else; what a pen did may be meant.
  function lost(event: PointerEvent): void {
    if (event.pointerId !== underway?.pointer) return;
    const taken = event.pointerType === "touch" && event.type === "pointercancel";
    leave(keepsWhenLost && !taken ? "end" : "cancel");
  }

  const listeners = { pointerdown: down, pointermove: move, pointerup: up };
  const ends = { pointercancel: lost, lostpointercapture: lost };
  const all = Object.entries({ ...listeners, ...ends }) as [string, EventListener][];
  for (const [name, listener] of all) element.addEventListener(name, listener);
  return () => {
    leave(keepsWhenLost ? "end" : "cancel");
    for (const [name, listener] of all) element.removeEventListener(name, listener);
  };
}

function noticePen(event: PointerEvent, hand: Hand): void {
  if (event.pointerType !== "pen") return;
  hand.penSeenAt = event.timeStamp;
  hand.dropFinger?.();
}

function counts(event: PointerEvent, { hand, takesEraser = false }: PointerDeps): boolean {
  if (event.pointerType === "touch") {
    return event.isPrimary && hand.dropFinger === null && !isPalm(hand, event.timeStamp);
  }
  return event.button === 0 || (takesEraser && isEraser(event));
}
