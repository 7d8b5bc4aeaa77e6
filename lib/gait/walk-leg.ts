import { type LegLength, legLength } from "../body";
import type { Walk, WalkPanel } from "./walk";

/** The figure's leg length on this walk's paper: from its stands, else from its other poses. */
export function walkLegLength({ panels }: Pick<Walk, "panels">): LegLength {
  const stands: WalkPanel["marks"][] = [];
  const others: WalkPanel["marks"][] = [];
  for (const { pose, marks } of panels) (pose === "stand" ? stands : others).push(marks);
  return legLength(stands, others);
}
