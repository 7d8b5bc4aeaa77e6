import { type LegLength, legLength } from "../body";
import type { Walk } from "./walk";

/** The figure's leg length on this walk's paper: from its stands, else from its other poses. */
export function walkLegLength({ panels }: Pick<Walk, "panels">): LegLength {
  const stands = panels.filter((panel) => panel.pose === "stand");
  const others = panels.filter((panel) => panel.pose !== "stand");
  return legLength(
    stands.map((panel) => panel.marks),
    others.map((panel) => panel.marks),
  );
}
