import { followPointer, type Hand, pointOn } from "../_paper";
import { gripOf } from "./grip";
import type { MarkHand } from "./mark-hand";

/** Hands what a pointer does on a paper to the hand that marks. */
export function listenToPointer(paper: HTMLElement, hand: Hand, marks: MarkHand): () => void {
  return followPointer(paper, {
    hand,
    begin(event) {
      const { width } = paper.getBoundingClientRect();
      if (!marks.down(pointOn(event, paper), gripOf(width, event.pointerType))) return null;
      return {
        move: (moved) => marks.move(pointOn(moved, paper), moved.altKey),
        end: () => marks.up(),
        cancel: () => marks.cancel(),
      };
    },
  });
}
