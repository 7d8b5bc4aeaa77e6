import type { Level } from "../finding";
import type { Method } from "../method";
import { COMMON_YARDSTICKS } from "../walk";
import { NEIGHBOURS, patternLimits } from "./neighbouring-steps";

/** How far the hips may rise and sink within a step, leg lengths; gravest first. */
export const RANGE_LIMITS: readonly {
  readonly level: Level;
  readonly from: number;
  readonly to: number;
  readonly tripRate: number;
}[] = [
  { level: "shows", from: 0.005, to: 0.1, tripRate: 0 },
  { level: "may-show", from: 0.01, to: 0.08, tripRate: 0.022 },
];

export const RANGE_SOURCE =
  "317 captured steps by 15 people: the hips rise and sink by 3.0 % of a leg on average (0.9 to 9.1 %), outside 1 to 8 % in 2.2 % and outside 0.5 to 10 % in none";

export const hipRangeMethod: Method = {
  check: "hip-range",
  asks: "How far do the hips rise and sink within a step?",
  measures:
    "The heights of the hips in every pose from a contact to the next, that one with it: the highest less the lowest. Where all of them have both hips marked in both views, a height is the mean of the four marks, which is told more exactly.",
  formula: ["range = highest hips − lowest hips, contact to next contact"],
  limits: [
    ...RANGE_LIMITS.map(
      ({ level, from, to, tripRate }) =>
        ({
          of: "highest hips over lowest, within a step",
          yardsticks: COMMON_YARDSTICKS,
          level,
          fires: "outside",
          value: [from, to],
          unit: "leg",
          source: RANGE_SOURCE,
          tripRate,
        }) as const,
    ),
    ...patternLimits("highest hips over lowest, within a step", NEIGHBOURS.hipRange),
  ],
  life: "The hips rise and sink by 3.0 % of a leg on average, 1.3 to 5.7 % in nine steps of ten.",
};
