import { distance, median, rootSumSquare } from "../geometry";
import { SIDES, type Side } from "./joint";
import type { PoseMarks, ViewMarks } from "./mark";
import { markOf } from "./mark-of";
import { PANEL } from "./panel-space";

/**
 * How long the figure's leg is on the paper, hip joint to sole: what every distance on the ground
 * is told in. Units: panel units, ± likewise.
 */
export type LegLength =
  | {
      readonly kind: "value";
      readonly value: number;
      readonly plusMinus: number;
      /** `stand`: measured on the stand. `panels`: the median over the poses, ankle height assumed. */
      readonly from: "stand" | "panels";
    }
  | { readonly kind: "cannot-tell"; readonly needs: string };

interface Length {
  readonly value: number;
  readonly plusMinus: number;
}

/**
 * Leg over thigh + shank. 1 + 0.039/0.491: ankle height 0.039 of stature, thigh + shank 0.491
 * (Drillis & Contini 1966, as drawn in Winter 2009, fig. 4.1). The captured walks use the same.
 */
export const LEG_OVER_THIGH_AND_SHANK = 1.079;

/**
 * Leg length: hip to knee, knee to ankle, and the ankle's height over the sole, on the stand.
 * Without a marked stand the median of (hip to knee + knee to ankle) × 1.079 over the poses.
 *
 * Shapes:  the stands and the other poses, as marks
 * Units:   panel units
 * Errors:  none; too few marks answer "cannot-tell"
 */
export function legLength(stands: readonly PoseMarks[], poses: readonly PoseMarks[]): LegLength {
  for (const stand of stands) {
    const standing = legOfStand(stand.side) ?? legOfStand(stand.front);
    if (standing !== null) return { kind: "value", ...standing, from: "stand" };
  }
  // From ahead a bent leg is foreshortened, so walking poses are read from the side alone.
  const legs = poses.flatMap(({ side }) => limbs(side));
  if (legs.length === 0) {
    return { kind: "cannot-tell", needs: "a hip, knee and ankle of one leg marked in a side view" };
  }
  return {
    kind: "value",
    value: LEG_OVER_THIGH_AND_SHANK * median(legs.map((leg) => leg.value)),
    // The median's own scatter is smaller; one leg's ± is the honest upper bound.
    plusMinus: LEG_OVER_THIGH_AND_SHANK * median(legs.map((leg) => leg.plusMinus)),
    from: "panels",
  };
}

/** Mean of the legs that are marked on a stand, or null when neither is. */
function legOfStand(marks: ViewMarks): Length | null {
  const legs = SIDES.flatMap((side) => {
    const limb = thighAndShank(marks, side);
    const ankle = markOf(marks, `${side}-ankle`);
    if (limb === null || ankle === null) return [];
    const sole = soleUnder(marks, side);
    return [
      {
        value: limb.value + (sole.y - ankle.y),
        plusMinus: rootSumSquare(limb.plusMinus, ankle.precision, sole.precision),
      },
    ];
  }).filter((leg) => leg.value > 0);
  if (legs.length === 0) return null;
  return {
    value: legs.reduce((sum, leg) => sum + leg.value, 0) / legs.length,
    plusMinus: rootSumSquare(...legs.map((leg) => leg.plusMinus)) / legs.length,
  };
}

/** A foot stands on its lowest mark; where none is marked, on the ground line. */
function soleUnder(marks: ViewMarks, side: Side): { y: number; precision: number } {
  const soles = (["heel", "ball", "toe"] as const)
    .map((joint) => markOf(marks, `${side}-${joint}`))
    .filter((mark) => mark !== null);
  return soles.reduce<{ y: number; precision: number }>(
    (lowest, mark) => (mark.y > lowest.y ? mark : lowest),
    soles[0] ?? { y: PANEL.groundY, precision: 0 },
  );
}

function limbs(marks: ViewMarks): Length[] {
  return SIDES.map((side) => thighAndShank(marks, side)).filter((limb) => limb !== null);
}

function thighAndShank(marks: ViewMarks, side: Side): Length | null {
  const hip = markOf(marks, `${side}-hip`);
  const knee = markOf(marks, `${side}-knee`);
  const ankle = markOf(marks, `${side}-ankle`);
  if (hip === null || knee === null || ankle === null) return null;
  const value = distance(hip, knee) + distance(knee, ankle);
  if (!(value > 0)) return null;
  // The knee lies in both lengths; on a straight leg its error cancels, so this is on the safe side.
  return {
    value,
    plusMinus: rootSumSquare(hip.precision, knee.precision, knee.precision, ankle.precision),
  };
}
