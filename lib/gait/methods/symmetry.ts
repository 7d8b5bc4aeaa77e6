import type { Grade, Method } from "../method";

const DEGREE = Math.PI / 180;

/** How far the shoulder line may lean, worst first. Radians. */
export const LEAN_LIMITS: readonly Grade[] = [
  { level: "may-show", value: 7.6 * DEGREE, tripRate: 0 }, // twice the most that captured pairs lean
  { level: "tidy", value: 3.8 * DEGREE, tripRate: 0 }, // the most: trips on none of them
];
export const LEAN_SOURCE =
  "88 pairs of mirrored poses from six captured walks by five people: the shoulder line leans 1.7° on average, 3.8° at most";

export const symmetryMethod: Method = {
  check: "symmetry",
  asks: "Do the two steps mirror each other?",
  measures:
    "Reads the tilt of the shoulder line in the front view at the same pose of both steps. Mirrored steps tilt it by turns to either side; what is left over is a lean that stays.",
  formula: [
    "tilt = angle of the line from the right to the left shoulder, left down positive",
    "lean = ½ ( tilt at a pose of one step + tilt at the same pose of the other )",
    "± = ½ √( ±tilt² + ±other tilt² )",
    "the pose that leans farthest counts",
  ],
  limits: LEAN_LIMITS.map((grade) => ({
    of: "lean of the shoulders that stays",
    yardsticks: ["trade", "life"],
    fires: "above",
    unit: "rad",
    source: LEAN_SOURCE,
    ...grade,
  })),
  life: "In 88 pairs of mirrored poses the shoulder line leans 1.7° on average and 3.8° at most. That it may show beyond twice the most is our own choice.",
};
