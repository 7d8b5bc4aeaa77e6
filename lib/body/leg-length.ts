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
      /**
       * `stand`: measured on the stand. `panels`: the median over the poses, ankle height assumed.
       * `heels`: the same without ankles, by hip to knee and knee to heel.
       */
      readonly from: "stand" | "panels" | "heels";
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
 * Leg over (hip to knee + knee to heel): so the quick set, which has no ankles, tells sizes too.
 * Source: poses of six captured walks (CMU database, clips 05_01 07_01 16_15 16_22 35_08 39_01): the
 * sum is 1.009 of a leg (medians 1.006 to 1.011), in any pose of the step 0.986 to 1.023.
 */
export const LEG_OVER_HIP_TO_HEEL = 1 / 1.009;

/** The largest that a single captured pose strayed from it, as a share of a leg: same source. */
const HIP_TO_HEEL_PLUS_MINUS = 0.023;

/**
 * Leg length: hip to knee, knee to ankle, and the ankle's height over the sole, on the stand.
 * Without a marked stand the median of (hip to knee + knee to ankle) × 1.079 over the poses, and
 * without an ankle the median of (hip to knee + knee to heel) ÷ 1.009.
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
  const toAnkles = poses.flatMap(({ side }) => limbs(side, "ankle"));
  if (toAnkles.length > 0)
    return { ...medianLeg(toAnkles, LEG_OVER_THIGH_AND_SHANK), from: "panels" };
  const toHeels = poses.flatMap(({ side }) => limbs(side, "heel"));
  if (toHeels.length === 0) return { kind: "cannot-tell", needs: NEEDS };
  const leg = medianLeg(toHeels, LEG_OVER_HIP_TO_HEEL);
  const plusMinus = rootSumSquare(leg.plusMinus, HIP_TO_HEEL_PLUS_MINUS * leg.value);
  return { ...leg, plusMinus, from: "heels" };
}

const NEEDS = "a hip, knee and ankle or heel of one leg marked in a side view";

function medianLeg(legs: readonly Length[], factor: number) {
  return {
    kind: "value" as const,
    value: factor * median(legs.map((leg) => leg.value)),
    // The median's own scatter is smaller; one leg's ± is the honest upper bound.
    plusMinus: factor * median(legs.map((leg) => leg.plusMinus)),
  };
}

/** Mean of the legs that are marked on a stand, or null when neither is. */
function legOfStand(marks: ViewMarks): Length | null {
  const legs = SIDES.flatMap((side) => {
    const limb = limbTo(marks, side, "ankle");
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

type LegEnd = "ankle" | "heel";

function limbs(marks: ViewMarks, end: LegEnd): Length[] {
  return SIDES.map((side) => limbTo(marks, side, end)).filter((limb) => limb !== null);
}

/** Hip to knee and knee to the end that was marked. */
function limbTo(marks: ViewMarks, side: Side, end: LegEnd): Length | null {
  const hip = markOf(marks, `${side}-hip`);
  const knee = markOf(marks, `${side}-knee`);
  const last = markOf(marks, `${side}-${end}`);
  if (hip === null || knee === null || last === null) return null;
  const value = distance(hip, knee) + distance(knee, last);
  if (!(value > 0)) return null;
  // The knee lies in both lengths; on a straight leg its error cancels, so this is on the safe side.
  return {
    value,
    plusMinus: rootSumSquare(hip.precision, knee.precision, knee.precision, last.precision),
  };
}
