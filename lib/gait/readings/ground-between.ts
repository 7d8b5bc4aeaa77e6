import { rootSumSquare } from "../../geometry";
import type { Reading } from "../finding";
import { placeOf } from "../ground-mark";
import type { Study } from "../study";
import type { WalkPanel } from "../walk";

/** Something seen on a panel: how far ahead of the panel's middle. Leg lengths. */
export interface SeenOn {
  readonly panel: WalkPanel;
  readonly x: number;
  readonly plusMinus: number;
}

/**
 * How far along the ground it is from what one panel shows to what another does, forward positive.
 *
 * The ± holds that of both marks and, where places are solved, how exactly the planted feet tell the two panels
 * apart. The marks that told it may be those that are measured, which makes the ± rather too wide than too
 * narrow. Places that were set, and those that follow from the travel, are exact.
 *
 * Units:   leg lengths
 * Errors:  none; null where a panel has no place
 */
export function groundBetween(
  study: Study,
  from: SeenOn,
  to: SeenOn,
): Omit<Reading, "unit"> | null {
  const value = placeOf(to.panel, study.walk) + to.x - (placeOf(from.panel, study.walk) + from.x);
  if (!Number.isFinite(value)) return null;
  const apart = study.placesWithin(from.panel, to.panel);
  return { value, plusMinus: rootSumSquare(from.plusMinus, to.plusMinus, apart) };
}
