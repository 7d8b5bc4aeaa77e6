"use client";
import { Button } from "../_controls";
import { useRoom } from "../_room";
import { passOn as words } from "../_words";
import { useWorkspace, useWorkspaceStore } from "../_workspace";
import { placeFigure } from "./place-figure";

/** Places a figure on the panel in hand; where it would replace marks it is shown first. */
export function FigureButton() {
  const room = useRoom();
  const workspace = useWorkspaceStore();
  const empty = useWorkspace((now) => now.panel === null);
  return (
    <Button small disabled={empty} onClick={() => placeFigure(room, workspace)}>
      {words.deeds.figure}
      <kbd>{words.keys.figure}</kbd>
    </Button>
  );
}
