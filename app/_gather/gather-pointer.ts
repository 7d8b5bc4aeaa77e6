import { PANEL } from "../../lib/body";
import type { Point } from "../../lib/geometry";
import type { PaperName } from "../_workspace";
import type { GatherHand, HandPlace } from "./gather-hand";

const PALM_MS = 1500; // the palm may stay a little after the pen has left

/**
 * Hands what a pointer does on a paper to the hand that gathers: a pen, a mouse's first button, or
 * one finger. A second finger leaves everything as it was, so that two move the paper.
 */
export function listenToGathering(
  paper: HTMLElement,
  self: PaperName,
  hand: GatherHand,
): () => void {
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
  function down(event: PointerEvent): void {
    const touch = event.pointerType === "touch";
    if (event.pointerType === "pen") penSeenAt = event.timeStamp;
    if (pointer !== null || !event.isPrimary || event.button !== 0) return;
    if (touch && event.timeStamp - penSeenAt < PALM_MS) return;
    pointer = event.pointerId;
    finger = touch;
    paper.setPointerCapture(event.pointerId);
    window.addEventListener("pointerdown", watchFingers, true);
    hand.down(pointOn(event, paper), event.shiftKey);
  }
  function move(event: PointerEvent): void {
    if (event.pointerType === "pen") penSeenAt = event.timeStamp;
    if (event.pointerId === pointer) hand.move(placeOf(event, paper, self));
  }
  function up(event: PointerEvent): void {
    if (event.pointerId === pointer) leave("up");
  }
  function lost(event: PointerEvent): void {
    if (event.pointerId === pointer) leave("cancel");
  }

  const listeners = { pointerdown: down, pointermove: move, pointerup: up };
  const ends = { pointercancel: lost, lostpointercapture: lost };
  const all = Object.entries({ ...listeners, ...ends }) as [string, EventListener][];
  for (const [name, listener] of all) paper.addEventListener(name, listener);
  return () => {
    leave("cancel");
    for (const [name, listener] of all) paper.removeEventListener(name, listener);
  };
}

function pointOn({ clientX, clientY }: PointerEvent, paper: Element): Point {
  const { left, top, width } = paper.getBoundingClientRect();
  const units = PANEL.width / width;
  return { x: (clientX - left) * units, y: (clientY - top) * units };
}

/** Where the pointer is, and over which other paper of the board. */
function placeOf(event: PointerEvent, paper: Element, self: PaperName): HandPlace {
  const at = pointOn(event, paper);
  // A quick pen is heard of once a frame; what it did in between is told along.
  const by = event
    .getCoalescedEvents()
    .slice(0, -1)
    .map((one) => pointOn(one, paper));
  const under = document.elementFromPoint(event.clientX, event.clientY);
  const other = under?.closest<HTMLElement>("[data-panel][data-view]") ?? null;
  const panel = other?.dataset.panel;
  const view = other?.dataset.view;
  if (other === null || panel === undefined || (view !== "side" && view !== "front")) {
    return { at, by, over: null };
  }
  if (panel === self.panel && view === self.view) return { at, by, over: null };
  return { at, by, over: { panel, view, at: pointOn(event, other) } };
}
