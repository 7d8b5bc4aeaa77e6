"use client";
import { type FocusEvent, type PointerEvent, useEffect } from "react";
import { useWorkspaceStore } from "../_workspace";

/** While the hand or the focus is on it, the remark is drawn whole; a finger's touch is no glance. */
export function useGlance(rank: number) {
  const workspace = useWorkspaceStore();
  useEffect(
    () => () => {
      const { glance, glanceAt } = workspace.getState();
      if (glance === rank) glanceAt(null); // its card went, or speaks of another place
    },
    [workspace, rank],
  );
  const look = () => workspace.getState().glanceAt(rank);
  const lookAway = () => workspace.getState().glanceAt(null);
  return {
    onPointerOver: (event: PointerEvent) => {
      if (event.pointerType === "touch") return;
      event.stopPropagation(); // a place within a card speaks for itself
      look();
    },
    onPointerLeave: lookAway,
    onFocus: (event: FocusEvent) => {
      event.stopPropagation();
      look();
    },
    onBlur: lookAway,
  };
}
