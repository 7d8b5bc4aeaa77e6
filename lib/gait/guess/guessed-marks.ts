import type { PoseMarks } from "../../body";
import type { NoReading } from "../answer";
import { placedFigure } from "../figure/placed-figure";
import type { Walk, Yardstick } from "../walk";

/** Where every joint of a panel may be. */
export interface GuessedMarks {
  readonly kind: "guess";
  readonly marks: PoseMarks;
}

/** A first guess for a panel's marks. */
export function guessedMarks(
  walk: Walk,
  panelId: string,
  yardstick: Yardstick,
): GuessedMarks | NoReading {
  const placed = placedFigure(walk, panelId, yardstick);
  return placed.kind === "figure" ? { kind: "guess", marks: placed.marks } : placed;
}
