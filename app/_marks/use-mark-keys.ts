"use client";
import type { FocusEvent, KeyboardEvent, RefObject } from "react";
import { JOINTS, type JointName } from "../../lib/body";
import type { View } from "../../lib/geometry";
import { liftMark, type PanelId } from "../../lib/sheet";
import { useRoom } from "../_room";
import type { MarkHand } from "./mark-hand";
import { isNudge, nudgeOf } from "./mark-keys";

export interface MarkKeys {
  onKeyDown(event: KeyboardEvent<HTMLElement>): void;
  onKeyUp(event: KeyboardEvent<HTMLElement>): void;
  onBlur(event: FocusEvent<HTMLElement>): void;
}

/**
 * Keys on the marks of one paper: arrows move the focused mark for as long as they are held, Delete
 * lifts it, Escape calls off what is under way or lets go of the mark.
 */
export function useMarkKeys(
  bench: RefObject<HTMLElement | null>,
  hand: MarkHand,
  { panel, view }: { readonly panel: PanelId; readonly view: View },
): MarkKeys {
  const room = useRoom();
  const lift = (handle: HTMLElement, joint: JointName) => {
    focusBeside(handle, bench.current);
    liftMark(room.drawing, panel, view, joint);
  };
  /** Answers whether the key was meant for the marks. */
  const act = (event: KeyboardEvent<HTMLElement>): boolean => {
    const handle = handleOf(event.target);
    const joint = jointOf(handle);
    const nudge = nudgeOf(event);
    if (event.key === "Escape") {
      if (hand.busy) hand.cancel();
      else if (handle !== null) bench.current?.focus();
      else return false;
      return true;
    }
    if (event.key === "Delete" || event.key === "Backspace") {
      if (joint !== null && handle !== null && !hand.busy) lift(handle, joint);
      return true; // never the board's Delete from here: that one removes the whole panel
    }
    if (joint === null || nudge === null) return false;
    hand.nudge(joint, nudge);
    return true;
  };
  return {
    onKeyDown(event) {
      const meant = act(event);
      if (meant) event.preventDefault();
      if (meant || hand.busy) event.stopPropagation(); // the board rests until the mark is down
    },
    onKeyUp(event) {
      if (isNudge(event.key)) hand.settle();
    },
    onBlur() {
      hand.settle();
    },
  };
}

function handleOf(target: EventTarget): HTMLElement | null {
  return target instanceof HTMLElement ? target.closest<HTMLElement>("[data-joint]") : null;
}

function jointOf(handle: HTMLElement | null): JointName | null {
  return JOINTS.find((joint) => joint === handle?.dataset.joint) ?? null;
}

/** Before a mark is lifted, focus goes to the next one, so that it is not lost with the mark. */
function focusBeside(handle: HTMLElement, bench: HTMLElement | null): void {
  const beside = [handle.nextElementSibling, handle.previousElementSibling].find(
    (element) => element instanceof HTMLElement,
  );
  (beside instanceof HTMLElement ? beside : bench)?.focus();
}
