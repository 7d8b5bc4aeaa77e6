"use client";
import type { MouseEvent } from "react";
import { flushSync } from "react-dom";
import { type JointName, markOf } from "../../lib/body";
import type { View } from "../../lib/geometry";
import { liftMark, type Panel } from "../../lib/sheet";
import { Button } from "../_controls";
import { useRoom } from "../_room";
import { marks as words } from "../_words";
import { useWorkspace, useWorkspaceStore } from "../_workspace";
import { acceptAllGuesses, acceptGuess, placeAsGuessed } from "./accept-guess";
import { focusMark } from "./focus-mark";
import { leftOfQuickSet } from "./prompt";

export interface PromptDeedsProps {
  readonly panel: Panel;
  readonly view: View;
  readonly joint: JointName;
}

/** What a hand without a pointer, and one without a keyboard, does with the joint in hand. */
export function PromptDeeds({ panel, view, joint }: PromptDeedsProps) {
  const room = useRoom();
  const workspace = useWorkspaceStore();
  const takeJoint = useWorkspace((now) => now.takeJoint);
  const placed = markOf(panel.marks[view], joint) !== null;
  const left = leftOfQuickSet(panel.marks[view], view).length;

  const place = (event: MouseEvent) => {
    const byKey = event.detail === 0;
    // Rendered at once: the focus goes to a mark that has to be there.
    flushSync(() => {
      if (acceptGuess(room, workspace) === null) placeAsGuessed(room, workspace, joint);
    });
    const { panel: now, view: seen } = workspace.getState();
    if (byKey && now === panel.id && seen === view) focusMark(panel.id, view, joint);
  };
  const lift = () => {
    liftMark(room.drawing, panel.id, view, joint);
    takeJoint(joint); // it stays in hand, to be put where it belongs
  };
  return (
    <>
      {/* One button in two moods, so that lifting does not take the focus away with it. */}
      <Button small onClick={placed ? lift : place}>
        {placed ? words.lift(joint) : words.place(joint)}
        {!placed && <kbd>{words.placeKey}</kbd>}
      </Button>
      {placed && (
        <Button small onClick={() => focusMark(panel.id, view, joint)}>
          {words.find(joint)}
        </Button>
      )}
      {!placed && left > 1 && (
        <Button small onClick={() => acceptAllGuesses(room, workspace)}>
          {words.placeAll(left)}
          <kbd>{words.placeAllKey}</kbd>
        </Button>
      )}
    </>
  );
}
