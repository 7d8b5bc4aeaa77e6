import type { StepPose } from "../../motion";
import type { Grade, Method, MethodLimit } from "../method";
import { YARDSTICKS } from "../walk";

const DEGREE = Math.PI / 180;

/** How far the shoulder line may lean, worst first. Radians. */
export const LEAN_LIMITS: readonly Grade[] = [
  { level: "may-show", value: 7.6 * DEGREE, tripRate: 0 }, // twice the most that captured pairs lean
  { level: "tidy", value: 3.8 * DEGREE, tripRate: 0 }, // the most: trips on none of them
];
export const LEAN_SOURCE =
  "88 pairs of mirrored poses from six captured walks by five people: the shoulder line leans 1.7° on average, 3.8° at most";

/** Symmetry index of the lengths of two steps, worst first. */
export const LENGTH_LIMITS: readonly Grade[] = [
  { level: "shows", value: 0.15, tripRate: 0 },
  { level: "may-show", value: 0.1, tripRate: 0.032 },
];
export const LENGTH_SOURCE =
  "Robinson, Herzog & Nigg (1987), J Manip Physiol Ther 10:172; captured pairs: over 15 % in none, over 10 % in 3.2 %";

/** The most that the hips of two mirrored poses differ in height, leg lengths. */
export const HEIGHTS_APART = 0.027;
/** The most that the lowest marks of the swinging feet do at passing, leg lengths. */
export const LIFTS_APART = 0.027;

/** Angles of the limbs in the side view. */
export type LimbAngle = "knee" | "thigh" | "elbow";
/** The most that they differ by, radians. The up comes anywhere in a step, so its knees differ most. */
export const ANGLES_APART: Readonly<Record<LimbAngle, Readonly<Record<StepPose, number>>>> = {
  knee: radians({ contact: 12.3, down: 10.5, passing: 8.4, up: 21.3 }),
  thigh: radians({ contact: 9.7, down: 7.9, passing: 5.3, up: 9.4 }),
  elbow: radians({ contact: 27.5, down: 23, passing: 18, up: 23.5 }),
};
export const PAIRS_SOURCE =
  "every pose of a step with the same pose of the next in six captured walks by five people, 22 pairs a pose: the most that they differ by";

/** Beyond the most that captured pairs differ by it is tidy; beyond twice that it may show (our own choice). */
export function evenWithin(most: number): readonly Grade[] {
  return [
    { level: "may-show", value: 2 * most, tripRate: 0 },
    { level: "tidy", value: most, tripRate: 0 },
  ];
}

function radians(of: Record<StepPose, number>): Record<StepPose, number> {
  const { contact, down, passing, up } = of;
  return {
    contact: contact * DEGREE,
    down: down * DEGREE,
    passing: passing * DEGREE,
    up: up * DEGREE,
  };
}

function limitsOf(
  of: string,
  unit: MethodLimit["unit"],
  source: string,
  grades: readonly Grade[],
): MethodLimit[] {
  return grades.map((grade) => ({
    of,
    yardsticks: YARDSTICKS,
    fires: "above",
    unit,
    source,
    ...grade,
  }));
}

export const symmetryMethod: Method = {
  check: "symmetry",
  asks: "Do the two steps mirror each other?",
  measures:
    "Holds each pose of a step against the same pose of the other, sides exchanged: how high the hips and the swinging foot are, how far knees and elbows bend and thighs lean, and from the front how the shoulder line tilts, which mirrored steps do by turns to either side. The lengths of the two steps are compared as well. Where a load is marked an arm holds it, and elbows are left out. All yardsticks ask the same.",
  formula: [
    "index of the lengths = | L − R | / ( ½ (L + R) )",
    "apart = | reading at a pose − reading at the same pose of the other step |",
    "tilt = angle of the line from the right to the left shoulder, left down positive",
    "lean = ½ ( tilt at a pose of one step + tilt at the same pose of the other )",
    "± = √( ±one² + ±other² ); of the lean half of it; of the index over ½ (L + R)",
    "the pose farthest beyond what captured pairs differ by counts",
  ],
  limits: [
    ...limitsOf("step lengths, symmetry index", "share", LENGTH_SOURCE, LENGTH_LIMITS),
    ...limitsOf("height of the hips", "leg", PAIRS_SOURCE, evenWithin(HEIGHTS_APART)),
    ...limitsOf(
      "lift of the swinging foot at passing",
      "leg",
      PAIRS_SOURCE,
      evenWithin(LIFTS_APART),
    ),
    ...(["knee", "thigh", "elbow"] as const).flatMap((limb) =>
      (["contact", "down", "passing", "up"] as const).flatMap((pose) =>
        limitsOf(`${limb} at ${pose}`, "rad", PAIRS_SOURCE, evenWithin(ANGLES_APART[limb][pose])),
      ),
    ),
    ...limitsOf("lean of the shoulders that stays", "rad", LEAN_SOURCE, LEAN_LIMITS),
  ],
  life: "In 88 pairs of mirrored poses the shoulder line leans 1.7° on average and 3.8° at most; hips differ by at most 2.7 % of a leg in height; step lengths by 5.1 % on average, more than 10 % in 3.2 % of pairs. That a pose may show beyond twice the most is our own choice.",
};
