import { followPointer, type Hand, passedBy, pointOn } from "../_paper";
import type { PaperName } from "../_workspace";
import type { GatherHand, HandPlace } from "./gather-hand";

export interface GatherPointerDeps {
  readonly hand: Hand;
  /** The paper that the pointer comes down on. */
  readonly self: PaperName;
  readonly gathering: GatherHand;
}

/** Hands what a pointer does on a paper to the hand that gathers. */
export function listenToGathering(
  paper: HTMLElement,
  { hand, self, gathering }: GatherPointerDeps,
): () => void {
  return followPointer(paper, {
    hand,
    begin(event) {
      gathering.down(pointOn(event, paper), {
        adds: event.shiftKey,
        finger: event.pointerType === "touch",
      });
      return {
        move: (moved) => gathering.move(placeOf(moved, paper, self)),
        end: () => gathering.up(),
        cancel: () => gathering.cancel(),
      };
    },
  });
}

/** Where the pointer is, and over which other paper of the board. */
function placeOf(event: PointerEvent, paper: Element, self: PaperName): HandPlace {
  return {
    at: pointOn(event, paper),
    by: passedBy(event)
      .slice(0, -1)
      .map((one) => pointOn(one, paper)),
    over: () => otherPaper(event, self),
  };
}

function otherPaper(event: PointerEvent, self: PaperName): ReturnType<HandPlace["over"]> {
  const under = document.elementFromPoint(event.clientX, event.clientY);
  const other = under?.closest<HTMLElement>("[data-panel][data-view]") ?? null;
  const panel = other?.dataset.panel;
  const view = other?.dataset.view;
  if (other === null || panel === undefined || (view !== "side" && view !== "front")) return null;
  if (panel === self.panel && view === self.view) return null;
  return { panel, view, at: pointOn(event, other) };
}
