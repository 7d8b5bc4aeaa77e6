import { gathered } from "../gathered";
import { median, rootSumSquare } from "../geometry";
import { SIDES, type Side } from "./joint";
import { type Length, limbs, limbTo } from "./leg-limbs";
import type { PoseMarks, ViewMarks } from "./mark";
import { markOf } from "./mark-of";
import { PANEL } from "./panel-space";
import { limbJoint } from "./side";

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
 * How far a stand's leg may differ from the poses' before they cannot be of one size, as a share of
 * theirs and beyond what their marks may be off. Source: common practice, no source; a leg drawn by
 * hand from pose to pose strays by less.
 */
const ONE_SIZE_WITHIN = 0.15;

/**
 * Leg length: hip to knee, knee to ankle, and the ankle's height over the sole, on the stand; where the
 * stand has no ankle, (hip to knee + knee to heel) ÷ 1.009. Without a marked stand the median of (hip
 * to knee + knee to ankle) × 1.079 over the poses, and without an ankle the median of (hip to knee +
 * knee to heel) ÷ 1.009.
 *
 * A stand of another size than the poses answers "cannot-tell" rather than the poses' own median: the
 * stand also tells the shape of the foot, and which of the two sizes is meant only the artist knows.
 * Like is held against like (hip to knee to the same end), so a build with high ankles is no other size.
 *
 * Shapes:  the stands and the other poses, as marks
 * Units:   panel units
 * Errors:  none; too few marks, or two sizes, answer "cannot-tell"
 */
export function legLength(stands: readonly PoseMarks[], poses: readonly PoseMarks[]): LegLength {
  for (const stand of stands) {
    const standing = standingLeg(stand);
    if (standing === null) continue;
    if (!isOneSize(stand, poses)) return { kind: "cannot-tell", needs: NEEDS_ONE_SIZE };
    return { kind: "value", ...standing, from: "stand" };
  }
  // From ahead a bent leg is foreshortened, so walking poses are read from the side alone.
  const toAnkles = gathered(poses, ({ side }) => limbs(side, "ankle"));
  if (toAnkles.length > 0)
    return { ...medianLeg(toAnkles, LEG_OVER_THIGH_AND_SHANK), from: "panels" };
  const toHeels = gathered(poses, ({ side }) => limbs(side, "heel"));
  if (toHeels.length === 0) return { kind: "cannot-tell", needs: NEEDS };
  const leg = medianLeg(toHeels, LEG_OVER_HIP_TO_HEEL);
  return { ...leg, plusMinus: withHeelStray(leg), from: "heels" };
}

/** The leg of a stand, for as long as somebody holds its marks. */
const standingKnown = new WeakMap<PoseMarks, Length | null>();

function standingLeg(stand: PoseMarks): Length | null {
  const before = standingKnown.get(stand);
  if (before !== undefined) return before;
  const leg = legOfStand(stand.side) ?? legOfStand(stand.front) ?? heelLeg(stand.side);
  standingKnown.set(stand, leg);
  return leg;
}

const NEEDS_ONE_SIZE = "the stand and the poses drawn at one size";
const NEEDS = "a hip, knee and ankle or heel of one leg marked in a side view";

function medianLeg(legs: readonly Length[], factor: number) {
  return {
    kind: "value" as const,
    value: factor * median(legs.map((leg) => leg.value)),
    // The median's own scatter is smaller; one leg's ± is the honest upper bound.
    plusMinus: factor * median(legs.map((leg) => leg.plusMinus)),
  };
}

/** The ± of a leg told by its heel: its marks', and how far poses stray from the ratio. */
function withHeelStray({ value, plusMinus }: Length): number {
  return rootSumSquare(plusMinus, HIP_TO_HEEL_PLUS_MINUS * value);
}

/** The leg of a stand that has no ankle. From the side: from ahead the heel lies behind the ankle. */
function heelLeg(side: ViewMarks): Length | null {
  const legs = limbs(side, "heel");
  if (legs.length === 0) return null;
  const leg = meanLeg(legs);
  const scaled = {
    value: LEG_OVER_HIP_TO_HEEL * leg.value,
    plusMinus: LEG_OVER_HIP_TO_HEEL * leg.plusMinus,
  };
  return { ...scaled, plusMinus: withHeelStray(scaled) };
}

/** Whether a stand is of the poses' size, as far as marks that both have can tell. */
function isOneSize({ side, front }: PoseMarks, poses: readonly PoseMarks[]): boolean {
  for (const end of ["ankle", "heel"] as const) {
    const ahead = end === "ankle" ? limbs(front, end) : [];
    const standing = [...limbs(side, end), ...ahead];
    const walking = gathered(poses, (pose) => limbs(pose.side, end));
    if (standing.length === 0 || walking.length === 0) continue;
    const stand = meanLeg(standing);
    if (isNearAll(stand.value, walking)) return true;
    const typical = medianLeg(walking, 1);
    const off = Math.abs(stand.value - typical.value);
    const slack = rootSumSquare(stand.plusMinus, typical.plusMinus);
    return off - slack <= ONE_SIZE_WITHIN * typical.value;
  }
  return true;
}

/** Whether a leg is of one size with the shortest and the longest of others, and so with what is typical of them. */
function isNearAll(leg: number, others: readonly Length[]): boolean {
  let [least, most] = [Number.POSITIVE_INFINITY, 0];
  for (const { value } of others) {
    least = Math.min(least, value);
    most = Math.max(most, value);
  }
  return Math.max(Math.abs(leg - least), Math.abs(leg - most)) <= ONE_SIZE_WITHIN * least;
}

/** Mean of the legs that are marked on a stand, or null when neither is. */
function legOfStand(marks: ViewMarks): Length | null {
  const legs = gathered(SIDES, (side) => {
    const limb = limbTo(marks, side, "ankle");
    const ankle = markOf(marks, limbJoint(side, "ankle"));
    if (limb === null || ankle === null) return [];
    const sole = soleUnder(marks, side);
    return [
      {
        value: limb.value + (sole.y - ankle.y),
        plusMinus: rootSumSquare(limb.plusMinus, ankle.precision, sole.precision),
      },
    ];
  }).filter((leg) => leg.value > 0);
  return legs.length === 0 ? null : meanLeg(legs);
}

function meanLeg(legs: readonly Length[]): Length {
  return {
    value: legs.reduce((sum, leg) => sum + leg.value, 0) / legs.length,
    plusMinus: rootSumSquare(...legs.map((leg) => leg.plusMinus)) / legs.length,
  };
}

/** A foot stands on its lowest mark; where none is marked, on the ground line. */
function soleUnder(marks: ViewMarks, side: Side): { y: number; precision: number } {
  const soles = (["heel", "ball", "toe"] as const)
    .map((joint) => markOf(marks, limbJoint(side, joint)))
    .filter((mark) => mark !== null);
  return soles.reduce<{ y: number; precision: number }>(
    (lowest, mark) => (mark.y > lowest.y ? mark : lowest),
    soles[0] ?? { y: PANEL.groundY, precision: 0 },
  );
}
