import type { Grade, Method, MethodLimit } from "../method";
import { NEIGHBOURS, patternLimits } from "./neighbouring-steps";

/** A gap may be this many exposures off the even layout, and two steps this many apart. */
export const EXPOSURES_OFF = 1;
export const SPACING_SOURCE =
  "Williams, The Animator's Survival Kit (2001): poses at 0, ¼, ½, ¾ of the step";

/** When the feet pass, as shares of the step; worst first. */
export const PASSING_LIMITS: readonly (Omit<Grade, "value"> & {
  readonly from: number;
  readonly to: number;
})[] = [
  { level: "shows", from: 0.4, to: 0.7, tripRate: 0 },
  { level: "may-show", from: 0.45, to: 0.65, tripRate: 0.006 },
];
export const PASSING_TIME_SOURCE =
  "317 captured steps by 15 people: passing outside 0.40–0.70 of the step in none, outside 0.45–0.65 in 0.6 %";

/** Half of what people themselves span, 0.55–0.67: ranking counts in these. */
export const PASSING_SPREAD = 0.06;

/** Symmetry index of step times, as a share; worst first. */
export const SIDES_LIMITS: readonly Grade[] = [
  { level: "shows", value: 0.15, tripRate: 0.008 },
  { level: "may-show", value: 0.1, tripRate: 0.041 },
];
export const SIDES_SOURCE =
  "Robinson, Herzog & Nigg (1987), J Manip Physiol Ther 10:172; captured pairs: over 15 % in 0.8 %, over 10 % in 4.1 %";

const SPACING: readonly MethodLimit[] = ([1, 2] as const).map((exposure) => ({
  of: `a gap against the even layout's, on ${exposure === 1 ? "ones" : "twos"}`,
  yardsticks: ["trade"],
  level: "may-show",
  fires: "above",
  value: exposure * EXPOSURES_OFF,
  unit: "frames",
  source: SPACING_SOURCE,
  tripRate: null,
}));

export const gapsMethod: Method = {
  check: "gaps",
  asks: "Do the poses come when they are expected, and do both steps take the same time?",
  measures:
    "Reads the frame numbers alone. By the trade each gap of a step is held against the nearest even layout on whole exposures, its contacts left where they are; by life only the moment of passing is asked. The two steps of a stride are then held against each other.",
  formula: [
    "off = | frames between two poses − frames of the even layout between them |",
    "p = (frame of passing − frame of contact) / frames of the step",
    "on twos a pose stands for a moment anywhere within its two frames: ± 0.7 frames / step",
    "index = | L − R | / ( ½ (L + R) ), L and R the frames of the left and the right step",
    "the index is remarked only where L and R differ by more than one exposure",
  ],
  limits: [
    ...SPACING,
    ...PASSING_LIMITS.map(
      ({ level, from, to, tripRate }): MethodLimit => ({
        of: "when the feet pass, of the step",
        yardsticks: ["life"],
        level,
        fires: "outside",
        value: [from, to],
        unit: "share",
        source: PASSING_TIME_SOURCE,
        tripRate,
      }),
    ),
    ...SIDES_LIMITS.map(
      (grade): MethodLimit => ({
        of: "two steps of a stride, symmetry index of their times",
        yardsticks: ["trade", "life"],
        fires: "above",
        unit: "share",
        source: SIDES_SOURCE,
        ...grade,
      }),
    ),
    ...patternLimits("frames of the step, symmetry index", NEIGHBOURS.frames),
    ...patternLimits("when the down comes, of the step", NEIGHBOURS.down),
    ...patternLimits("when the feet pass, of the step", NEIGHBOURS.passing),
    ...patternLimits("when the up comes, of the step", NEIGHBOURS.up),
  ],
  life: "The feet pass at 0.60 of the step (0.55 to 0.67). The two steps of a stride differ by 4.4 % on average; 12 % of captured pairs differ by more than one frame at 24 a second.",
};
