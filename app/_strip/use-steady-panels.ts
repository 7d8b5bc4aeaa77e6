"use client";
import { useRef } from "react";
import type { Panel } from "../../lib/sheet";
import { useSheet } from "../_room";
import { useWorkspace } from "../_workspace";

/**
 * The strip's panels, in an order that holds while this person's pen is down: whatever others add,
 * remove or slide meanwhile, the paper under the pen stays where it is. Their ink and marks still come.
 */
export function useSteadyPanels(): readonly Panel[] {
  const now = useSheet((sheet) => sheet.panels);
  const penDown = useWorkspace((workspace) => workspace.penDown);
  const held = useRef(now);
  if (!penDown) held.current = now;
  if (!penDown || held.current === now) return now;
  return held.current.map((panel) => {
    const latest = now.find(({ id }) => id === panel.id);
    return latest === undefined ? panel : { ...latest, frame: panel.frame };
  });
}
