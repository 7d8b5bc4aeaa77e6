import type { Grade, Method } from "../method";
import { COMMON_YARDSTICKS } from "../walk";
import { NEIGHBOURS, patternLimits } from "./neighbouring-steps";

/** How far the swing toe may be under the ground in mid swing, worst first. Leg lengths. */
export const DRAGS: readonly Grade[] = [
  { level: "shows", value: 0.02, tripRate: 0 },
  { level: "may-show", value: 0.01, tripRate: 0.006 },
];
/** Higher than this at passing it is lifted more than a walk spends. Leg lengths. */
export const LIFTS = 0.12;

export const CLEARANCE_SOURCE =
  "317 captured steps by 15 people: the swing toe is lower than 1 % of a leg under the ground in 0.6 %, lower than 2 % in none; at passing it is higher than 12 % in none";

export const clearanceMethod: Method = {
  check: "clearance",
  asks: "Does the swinging foot clear the ground, and no more than that?",
  measures:
    "Reads the toe of the foot that swings, or its ball where no toe is marked, at passing, at the up and at breakdowns that stand by the same foot. How high it is at most is asked at passing alone; by a step that is gone by, it is the lowest mark of that foot which is held against its like.",
  formula: [
    "clearance = y(toe), leg lengths over the ground line",
    "asked: −clearance against how far it may drag, clearance at passing against how high it is lifted",
    "± = that of the mark",
  ],
  limits: [
    ...DRAGS.map(({ level, value, tripRate }) => ({
      of: "swing toe under the ground in mid swing",
      yardsticks: COMMON_YARDSTICKS,
      level,
      fires: "above" as const,
      value,
      unit: "leg" as const,
      source: CLEARANCE_SOURCE,
      tripRate,
    })),
    {
      of: "swing toe over the ground at passing",
      yardsticks: COMMON_YARDSTICKS,
      level: "may-show",
      fires: "above",
      value: LIFTS,
      unit: "leg",
      source: CLEARANCE_SOURCE,
      tripRate: 0,
    },
    ...patternLimits("lift of the swinging foot at passing", NEIGHBOURS.clearance),
  ],
  life: "The swing toe is lowest in mid swing, at 2.4 ± 1.0 % of a leg, which is about 2 cm; at passing it stands at 3.4 ± 1.2 %.",
};
