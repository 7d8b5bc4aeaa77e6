"use client";
import { marks as words } from "../_words";
import { useWorkspace } from "../_workspace";
import { TwoWays } from "./two-ways";

/** How one marks: what a drag takes along, and where the prompt goes when a view is done. */
export function MarkingWays() {
  const view = useWorkspace((workspace) => workspace.view);
  const dragging = useWorkspace((workspace) => workspace.dragging);
  const setDragging = useWorkspace((workspace) => workspace.setDragging);
  const onward = useWorkspace((workspace) => workspace.onward);
  const setOnward = useWorkspace((workspace) => workspace.setOnward);
  return (
    <>
      <TwoWays
        label={words.dragging.label}
        ways={[
          { way: "joint", name: words.dragging.joint },
          { way: "figure", name: words.dragging.figure },
        ]}
        chosen={dragging}
        onChoose={setDragging}
        hint={words.dragging.hint}
      />
      <TwoWays
        label={words.onward.label}
        ways={[
          { way: "next-panel", name: words.onward.nextPanel },
          { way: "other-view", name: words.onward.otherView(view) },
        ]}
        chosen={onward}
        onChoose={setOnward}
      />
    </>
  );
}
