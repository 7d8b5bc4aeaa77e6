import { PANEL } from "../../lib/body";
import type { Point } from "../../lib/geometry";
import { gripOf } from "./grip";
import type { MarkHand } from "./mark-hand";

const PALM_MS = 1500; // the palm may stay a little after the pen has left

/**
 * Hands what a pointer does on a paper to the hand that marks: a pen, a mouse's first button, or one
 * finger. A second finger leaves everything as it was, so that two move the paper; a palm beside a
 * pen does nothing.
 */
export function listenToPointer(paper: HTMLElement, hand: MarkHand): () => void {
  let pointer: number | null = null;
  let finger = false;
  let penSeenAt = Number.NEGATIVE_INFINITY;

  function leave(how: "up" | "cancel"): void {
    const id = pointer;
    if (id === null) return;
    pointer = null;
    window.removeEventListener("pointerdown", watchFingers, true);
    if (paper.hasPointerCapture(id)) paper.releasePointerCapture(id);
    hand[how]();
  }
  function watchFingers(event: PointerEvent): void {
    if (finger && event.pointerId !== pointer) leave("cancel");
  }
  function notice(event: PointerEvent): void {
    if (event.pointerType !== "pen") return;
    penSeenAt = event.timeStamp;
    if (finger) leave("cancel");
  }
  function down(event: PointerEvent): void {
    notice(event);
    const touch = event.pointerType === "touch";
    if (pointer !== null || !event.isPrimary || event.button !== 0) return;
    if (touch && event.timeStamp - penSeenAt < PALM_MS) return;
    const { width } = paper.getBoundingClientRect();
    if (!hand.down(pointOf(event, paper), gripOf(width, event.pointerType))) return;
    pointer = event.pointerId;
    finger = touch;
    paper.setPointerCapture(event.pointerId);
    window.addEventListener("pointerdown", watchFingers, true);
  }
  function move(event: PointerEvent): void {
    notice(event);
    if (event.pointerId === pointer) hand.move(pointOf(event, paper));
  }
  function up(event: PointerEvent): void {
    if (event.pointerId === pointer) leave("up");
  }
  function lost(event: PointerEvent): void {
    if (event.pointerId === pointer) leave("cancel");
  }

  paper.addEventListener("pointerdown", down);
  paper.addEventListener("pointermove", move);
  paper.addEventListener("pointerup", up);
  paper.addEventListener("pointercancel", lost);
  paper.addEventListener("lostpointercapture", lost);
  return () => {
    leave("cancel");
    paper.removeEventListener("pointerdown", down);
    paper.removeEventListener("pointermove", move);
    paper.removeEventListener("pointerup", up);
    paper.removeEventListener("pointercancel", lost);
    paper.removeEventListener("lostpointercapture", lost);
  };
}

function pointOf({ clientX, clientY }: PointerEvent, paper: HTMLElement): Point {
  const { left, top, width } = paper.getBoundingClientRect();
  const scale = PANEL.width / width;
  return { x: (clientX - left) * scale, y: (clientY - top) * scale };
}
